using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Limits;

public class OpenBarAboveStackTests
{
    private static readonly OpenBarAboveStack Check = new();

    public static Example Finds => new(() => Open("5", "1/2"), j => j.Say("W01", UnitFacts.OpenGap, "2\""));

    public static Example Passes => new(() => Open("5", "2"), j => j.Say("W01", UnitFacts.OpenGap, "1/2\""));

    // The generic cellular shade stacks to 2 1/2 in and 0.04 of its drop, 4 1/2 in for one ordered 50 in high: with glass from 5 in on, 1/2 in stay clear.
    [Fact]
    public void HalfAnInchMoreIsWithinWhatReadingsAndSheetsAreWorth() => Open("5", "1").Fine(Check, "W01");

    [Fact]
    public void JustMoreIsACaution()
    {
        var found = Open("5", "1 1/16").Fault(Check, "W01");
        Assert.Equal("Open, its bar is said to be 1 1/16\" above the glass: 9/16\" higher than its raised stack ends.", found.Message);
        Assert.Contains(("open: bar above glass", "1 1/16\""), found.Working!.Inputs);
    }

    [Fact]
    public void AStackThatCoversTheGlassLeavesNoBarAboveIt() => Assert.Equal(
        "Open, its bar is said to be 2\" above the glass: 4 1/2\" higher than its raised stack ends.", Open("2", "2").Fault(Check, "W01").Message);

    [Fact]
    public void ABarInFrontOfTheGlassIsReadAsNoneAboveIt() => Open("2", "0").Fine(Check, "W01");

    [Fact]
    public void OutsideTheStackBeginsHigher() =>
        Open("2", "2").Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.HeadAbove, "4").Fine(Check, "W01");

    [Fact]
    public void ARollerHasNoStack() => Open("2", "2").Say("W01", UnitFacts.Kind, "Roller").Silent(Check, "W01");

    [Fact]
    public void AnUnknownGapIsNotAPass() => Open("2", "2").Forget("W01", UnitFacts.OpenGap).Lacks(Check, "W01", "open: bar above glass");

    [Fact]
    public void UnknownGlassIsNotAPass() => Open("2", "2").Forget("W01", WindowFacts.GlassBelowHead).Lacks(Check, "W01", "glass below head");

    [Fact]
    public void AnUnknownStackIsNotAPass() =>
        Open("2", "2").SayOf("Cellular", CoveringKindFacts.StackShare, "").Lacks(Check, "W01", "stack, share of drop of Cellular in the kit");

    private static TestJob Open(string glass, string gap) => Jobs.Measured().Say("W01", UnitFacts.Kind, "Cellular").Say("W01", UnitFacts.OrderHeight, "50")
        .Say("W01", WindowFacts.GlassBelowHead, glass).Say("W01", UnitFacts.OpenGap, gap);
}
