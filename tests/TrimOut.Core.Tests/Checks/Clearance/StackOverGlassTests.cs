using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class StackOverGlassTests
{
    private static readonly StackOverGlass Check = new();

    public static Example Finds => new(() => Glass("10"), j => j.Say("W01", WindowFacts.GlassBelowHead, "4\""));

    public static Example Passes => new(() => Glass("10"), j => j.Say("W01", WindowFacts.GlassBelowHead, "5\""));

    // The generic cellular shade stacks to 2 1/2 in and 0.04 of its drop; the 60 in window is ordered 50 in high here, so that it is 4 1/2 in.
    [Fact]
    public void AStackThatEndsWhereTheGlassBeginsIsFine() => Glass("4 1/2").Fine(Check, "W01");

    [Fact]
    public void ASixtyFourthMoreIsWorthKnowing()
    {
        var found = Glass("4 7/16").Fault(Check, "W01");
        Assert.Equal("Raised, its stack is 4 1/2\" high and covers 1/16\" of the glass.", found.Message);
        Assert.Contains(("stack", "4.5 in"), found.Working!.Inputs);
    }

    // Inside, 60 in high, it stacks to 4.9 in; outside from a above it to 2.5 + 0.04 (60 + a), which ends at 1 in of glass from a = 3.9 / 0.96 = 4 1/16 in on.
    [Fact]
    public void WhatStartsHigherOutsideStacksHigherToo()
    {
        var job = Glass("1").Forget("W01", UnitFacts.OrderHeight);
        Assert.Equal("Have the owner agree, or mount it outside from 4 1/16\" above the opening.", job.Fault(Check, "W01").Mend);
        Outside(job, "4 1/16").Fine(Check, "W01");
        Assert.IsType<Core.Checks.Outcome.Found>(Outside(job, "4").Judge(Check, "W01"));
    }

    [Fact]
    public void ItsBracketsNeedWallAboveTheOpening() => Assert.EndsWith("mount it outside from 2\" above the opening.",
        Glass("4 7/16").Fault(Check, "W01").Mend, StringComparison.Ordinal);

    // The generic wood blind: 3 in and 0.08 of 50 in are 7 in.
    [Fact]
    public void AWoodBlindStacksHigher()
    {
        Glass("7").Say("W01", UnitFacts.Kind, "Wood blind").Fine(Check, "W01");
        Assert.StartsWith("Raised, its stack is 7\" high", Glass("6 63/64").Say("W01", UnitFacts.Kind, "Wood blind").Fault(Check, "W01").Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void AnOutsideMountStartsHigher() => Outside(Glass("1"), "3 1/2").Fine(Check, "W01");

    [Fact]
    public void AnOutsideMountThatStartsTooLowCoversToo() => Assert.StartsWith("Raised, its stack is 4 1/2\" high and covers 1/16\"",
        Outside(Glass("1"), "3 7/16").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void WhatStaysAboveTheOpeningNeedsNoGlass() => Outside(Glass("1"), "4 1/2").Forget("W01", WindowFacts.GlassBelowHead).Fine(Check, "W01");

    [Fact]
    public void ARollerDoesNotStack() => Glass("1").Say("W01", UnitFacts.Kind, "Roller").Silent(Check, "W01");

    [Fact]
    public void UnknownGlassIsNotAPass() => Glass("9").Forget("W01", WindowFacts.GlassBelowHead).Lacks(Check, "W01", "glass below head");

    [Fact]
    public void AnUnknownStackIsNotAPass() =>
        Glass("9").SayOf("Cellular", CoveringKindFacts.StackShare, "").Lacks(Check, "W01", "stack, share of drop of Cellular in the kit");

    [Fact]
    public void AnUnknownMountIsNotAPass() => Glass("9").Forget("W01", WindowFacts.Mount).Lacks(Check, "W01", "mount");

    [Fact]
    public void AnUnknownHeightIsNotAPass() =>
        new TestJob().Window("W01", kind: "Cellular").Say("W01", WindowFacts.Mount, "inside").Lacks(Check, "W01", "rough height");

    private static TestJob Glass(string below) =>
        Jobs.Measured().Say("W01", UnitFacts.Kind, "Cellular").Say("W01", UnitFacts.OrderHeight, "50").Say("W01", WindowFacts.GlassBelowHead, below);

    private static TestJob Outside(TestJob job, string above) => job.Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.HeadAbove, above);

    [Fact]
    public void OutsideOrOnceOrderedOnlyTheOwnerCanAgree()
    {
        const string Agree = "Have the owner agree that it covers the top of the glass.";
        Assert.Equal(Agree, Outside(Glass("1"), "3 7/16").Fault(Check, "W01").Mend);
        Assert.Equal(Agree, Glass("4 7/16").Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01").Mend);
    }
}
