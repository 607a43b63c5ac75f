using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class SetbackTooDeepTests
{
    private static readonly SetbackTooDeep Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "4\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "4 1/2\""));

    // A fascia 3 in deep, set back 1 1/2 in (common practice, no published source), needs 4 1/2 in.
    [Fact]
    public void EnoughDepthForSetbackAndCoverIsFine() => Depth("4 1/2").Fine(Check, "W01");

    [Fact]
    public void ALittleLessAsksForLessSetback()
    {
        var found = Depth("4 7/16").Fault(Check, "W01");
        Assert.Equal("Set back 1 1/2\", a head cover 3\" deep does not fit a depth of 4 7/16\".", found.Message);
        Assert.StartsWith("Set the brackets back 1 7/16\" or less", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void TheSetbackAsMeasuredCounts() => Depth("4").Say("W01", UnitFacts.Setback, "1").Fine(Check, "W01");

    [Fact]
    public void WhatStandsOutAnywayIsTheOtherChecksToSay() => Depth("2 31/32").Silent(Check, "W01");

    [Fact]
    public void AnUnknownHeadCoverIsNotAPass() => Depth("4").Forget("W01", UnitFacts.HeadCover).Lacks(Check, "W01", "head cover");

    private static TestJob Depth(string depth) => Jobs.Measured().Say("W01", WindowFacts.Depth, depth);

    [Fact]
    public void TheWorkingTellsTheDepths() => Assert.Equal("depth 4\", setback 1 1/2\", reaches back 3\", depth needed 2 1/2\"",
        string.Join(", ", Depth("4").Fault(Check, "W01").Working!.Inputs.Select(i => $"{i.Name} {i.Value}")));
}
