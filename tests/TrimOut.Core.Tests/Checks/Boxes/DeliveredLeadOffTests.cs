using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class DeliveredLeadOffTests
{
    private static readonly DeliveredLeadOff Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.LeadCameAt, "right"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.LeadCameAt, "left"));

    [Fact]
    public void TheLeadSideIsFine() => Jobs.Walked().Say("W01", UnitFacts.LeadCameAt, "left").Fine(Check, "W01");

    [Fact]
    public void TheOtherEndIsAStop() => Assert.Equal("Its lead leaves on the right; the lead side is left.",
        Jobs.Walked().Say("W01", UnitFacts.LeadCameAt, "right").Fault(Check, "W01").Message);

    [Fact]
    public void ABoxThatNobodyOpenedIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "lead leaves at");

    [Fact]
    public void ALeadSideThatNobodyDecidedIsNotAPass() =>
        Jobs.Walked().Say("W01", UnitFacts.LeadCameAt, "right").Forget("W01", UnitFacts.LeadSide).Lacks(Check, "W01", "lead side");
}
