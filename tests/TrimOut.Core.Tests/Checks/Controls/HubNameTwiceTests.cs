using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class HubNameTwiceTests
{
    private static readonly HubNameTwice Check = new();

    public static Example Finds => new(() => Named("Den left", "Attic"), j => j.Say("W02", UnitFacts.HubName, "Den left"));

    public static Example Passes => new(() => Named("Den left", "Attic"), j => j.Say("W02", UnitFacts.HubName, "Den right"));

    [Fact]
    public void ANameOfItsOwnIsFine() => Named("Den left", "Den right").Fine(Check, "W01");

    [Fact]
    public void TheSameNameIsAStopForBoth()
    {
        var job = Named("Den left", "den LEFT");
        Assert.Equal("W02 is also called \"Den left\" at the hub.", job.Fault(Check, "W01").Message);
        job.Fault(Check, "W02");
    }

    [Fact]
    public void TheTagOfAnotherUnitIsNoName()
    {
        Named("W01", "Den right").Fine(Check, "W01");
        Assert.Equal("It is called \"w02\" at the hub, and that is the tag of W02.", Named("w02", "Den right").Fault(Check, "W01").Message);
        var pair = Named("W02A", "Den right");
        pair.Fine(Check, "W01");
        pair.Do(TrimOut.Core.Decisions.AddItems.Unit(pair.House, pair.House.FindTag("W02")!.Id)).Fault(Check, "W01");
    }

    [Fact]
    public void AUnitWithoutANameIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "name at the hub");

    private static TestJob Named(string first, string second) =>
        new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.HubName, first).Say("W02", UnitFacts.HubName, second);
}
