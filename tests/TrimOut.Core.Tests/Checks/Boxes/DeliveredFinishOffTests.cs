using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class DeliveredFinishOffTests
{
    private static readonly DeliveredFinishOff Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.FinishAsOrdered, "no"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.FinishAsOrdered, "yes"));

    [Fact]
    public void AsOrderedIsFine() => Jobs.Walked().Say("W01", UnitFacts.FinishAsOrdered, "yes").Fine(Check, "W01");

    [Fact]
    public void AnotherIsACautionThatSaysWhatWasOrdered()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.FinishAsOrdered, "no");
        Assert.Equal("It did not come in the ordered fabric and color.", job.Fault(Check, "W01").Message);
        job.Say("W01", UnitFacts.Fabric, "Twill").Say("W01", UnitFacts.Colour, "Slate");
        Assert.Equal("It did not come in the ordered fabric and color: Twill, Slate.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void ABoxThatNobodyReadIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "finish as ordered");
}
