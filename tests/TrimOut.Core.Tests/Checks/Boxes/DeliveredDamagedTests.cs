using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class DeliveredDamagedTests
{
    private static readonly DeliveredDamaged Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.Damage, "dented tube"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.Damage, "none"));

    [Fact]
    public void NoneIsFine() => Jobs.Walked().Say("W01", UnitFacts.Damage, "None").Fine(Check, "W01");

    [Fact]
    public void AnythingElseIsACaution() =>
        Assert.Equal("It came with: dented tube.", Jobs.Walked().Say("W01", UnitFacts.Damage, "dented tube").Fault(Check, "W01").Message);

    [Fact]
    public void ABoxThatNobodyOpenedIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "damage");
}
