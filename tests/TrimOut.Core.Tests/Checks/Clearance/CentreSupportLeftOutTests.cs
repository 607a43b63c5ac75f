using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class CentreSupportLeftOutTests
{
    private static readonly CentreSupportLeftOut Check = new();

    public static Example Finds => new(() => Wide(), j => j.Mark("W01", "spliced"));

    public static Example Passes => new(() => Wide(), j => j.Mark("W01", "centre-support-clear").Mark("W01", "spliced"));

    [Fact]
    public void BeforeTheJobGoesOnNobodyAsks() => Wide().Silent(Check, "W01");

    [Fact]
    public void GoingOnWithoutItIsAStop() => Assert.Equal(
        "It is 36\" wide and needs a center support from 36\" on; nobody marked one, and the job has gone on.",
        Wide().Mark("W01", "spliced").Fault(Check, "W01").Message);

    [Fact]
    public void JustNarrowerItNeedsNone() =>
        Wide().SayOf("Roller", CoveringKindFacts.CentreFrom, "36 1/16").Mark("W01", "spliced").Silent(Check, "W01");

    [Fact]
    public void SayingThatItIsNotNeededDoesNotHoldAHeadRail() => Wide()
        .Do(j => MarkStep.NotNeeded(j.Unit("W01"), StepList.Find("centre-support-clear")!, "It looks strong enough.")).Mark("W01", "spliced")
        .Fault(Check, "W01");

    // An opening of 36 in and 2 in of overlap on each side: nothing is ordered yet.
    [Fact]
    public void OutsideTheOverlapsCountBeforeAnythingIsOrdered() => Assert.Equal(
        "It is 40\" wide and needs a center support from 38\" on; nobody marked one, and the job has gone on.",
        Jobs.Measured().Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "2")
            .SayOf("Roller", CoveringKindFacts.CentreFrom, "38").Mark("W01", "spliced").Fault(Check, "W01").Message);

    [Fact]
    public void AnUnknownWidthOfTheSheetIsNotAPass() =>
        Wide().SayOf("Roller", CoveringKindFacts.CentreFrom, "").Lacks(Check, "W01", "center support from of Roller in the kit");

    [Fact]
    public void AKindThatNeverNeedsOneIsNotAskedAtAnyWidth()
    {
        var job = Wide().SayOf("Roller", CoveringKindFacts.CentreFrom, "none").Mark("W01", "spliced");
        Assert.IsType<Outcome.DoesNotApply>(job.Judge(Check, "W01"));
        Assert.Equal("none", job.Unit("W01").Kind!.Show(CoveringKindFacts.CentreFrom));
        Assert.False(job.Unit("W01").NeedsCentreSupport);
        Assert.IsType<Outcome.DoesNotApply>(job.Forget("W01", UnitFacts.OrderWidth).Say("W01", WindowFacts.Mount, "outside").Judge(Check, "W01"));
    }

    private static TestJob Wide() => Jobs.Ordered().SayOf("Roller", CoveringKindFacts.CentreFrom, "36");

    [Fact]
    public void AStepOfHangingIsNotGoingOn() => Wide().Mark("W01", "clicked-in").Silent(Check, "W01");

    [Fact]
    public void WhatItsWidthWaitsForIsNamed()
    {
        var job = Jobs.Walked().Say("W01", WindowFacts.Mount, "outside");
        job.Lacks(Check, "W01", "overlap each side");
        job.Forget("W01", WindowFacts.RoughWidth).Lacks(Check, "W01", "rough width");
    }
}
