using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class StandsOutOfRevealTests
{
    private static readonly StandsOutOfReveal Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "2 3/4\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "3\""));

    [Fact]
    public void ACoverAsDeepAsTheRevealIsFine() => Depth("3").Fine(Check, "W01");

    [Fact]
    public void ALittleLessDepthAndItStandsOut() =>
        Assert.Equal("It needs 3\" to be flush and the opening is 2 15/16\" deep: 1/16\" stand out.", Depth("2 15/16").Fault(Check, "W01").Message);

    [Fact]
    public void WithoutACoverTheSheetsDepthForFlushCounts()
    {
        Depth("4").Say("W01", UnitFacts.HeadCover, "None").Fine(Check, "W01");
        Depth("3 63/64").Say("W01", UnitFacts.HeadCover, "None").Fault(Check, "W01");
    }

    [Fact]
    public void WhereItDoesNotFitAtAllTheOtherCheckSpeaks() => Depth("2 1/4").Silent(Check, "W01");

    [Fact]
    public void AnUnknownDepthIsNotAPass() => Depth("3").Forget("W01", WindowFacts.Depth).Lacks(Check, "W01", "depth");

    private static TestJob Depth(string depth) => Jobs.Measured().Say("W01", WindowFacts.Depth, depth);

    [Fact]
    public void TheWorkingTellsTheDepths() =>
        Assert.Equal("depth 2 15/16\", setback 1 1/2\", reaches back 3\", depth needed 2 1/2\"", Depth("2 15/16").Fault(Check, "W01").Worked);

    [Fact]
    public void OutsideNothingStandsInAReveal() => Depth("2").Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");

    [Fact]
    public void WhatIsMissingIsNamed()
    {
        Depth("4").Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
        Depth("4").SayOf("Roller", CoveringKindFacts.DepthNeeded, "").Lacks(Check, "W01", "depth needed of Roller in the kit");
        Depth("4").SayOf("Roller", CoveringKindFacts.Setback, "").Lacks(Check, "W01", "bracket setback of Roller in the kit");
        Depth("4").Say("W01", UnitFacts.HeadCover, "None").SayOf("Roller", CoveringKindFacts.DepthFlush, "")
            .Lacks(Check, "W01", "depth, flush of Roller in the kit");
        Depth("4").SayOf("Fascia 3 in", HeadCoverFacts.Depth, "").Lacks(Check, "W01", "depth of Fascia 3 in in the kit");
    }
}
