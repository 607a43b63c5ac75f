using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class TailUnderHalfWidthTests
{
    private static readonly TailUnderHalfWidth Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "12\""));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "18\""));

    [Fact]
    public void ATailOfHalfTheWindowIsFine() => Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "18").Fine(Check, "W01");

    [Fact]
    public void ATailShorterThanHalfTheWindowIsAStop()
    {
        var found = Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "17 15/16").Fault(Check, "W01");
        Assert.Equal("The tail is 17 15/16\"; half of the width is 18\".", found.Message);
        Assert.Equal("Pull 18 1/16\" more to the window now: that makes the whole width. 1/16\" more is the least.", found.Mend);
    }

    // Two parts of 18 in of an opening of 36: the second one's far end is 35 in from where its cable comes out, 1 in from the left jamb.
    [Fact]
    public void OfASecondUnitTheWayFromTheJambOfItsEntryCounts()
    {
        var job = Jobs.Roughed();
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01B", UnitFacts.EntrySide, "left")
            .Say("W01B", UnitFacts.EntryFromJamb, "1").Say("W01B", RunFacts.TailAtWindow, "17 1/2").Fine(Check, "W01B");
        Assert.Equal("The tail is 17 7/16\"; half of the way along the head to its far end is 17 1/2\".",
            job.Say("W01B", RunFacts.TailAtWindow, "17 7/16").Fault(Check, "W01B").Message);
    }

    [Fact]
    public void WhatIsFoundAfterDrywallCountsOverWhatWasLeft() => Jobs.Roughed().Say("W01", RunFacts.TailFound, "10").Fault(Check, "W01");

    /// <summary>It reaches past the opening on both sides: 36 and twice 6 are 48, of which half is 24.</summary>
    [Fact]
    public void AnOutsideMountIsAsWideAsItsOverlapsMakeIt()
    {
        var job = Jobs.Roughed().Say("W01", WindowFacts.Mount, "outside").Say("W01", RunFacts.TailAtWindow, "18");
        job.Fine(Check, "W01");
        Assert.Equal("The tail is 18\"; half of the width is 24\".", job.Say("W01", WindowFacts.OverlapEachSide, "6").Fault(Check, "W01").Message);
        job.Say("W01", RunFacts.TailAtWindow, "24").Fine(Check, "W01");
    }

    [Fact]
    public void AnUnknownTailIsNotAPass() => Jobs.Roughed().Forget("W01", RunFacts.TailAtWindow).Lacks(Check, "W01", "tail at window");

    [Fact]
    public void AnUnknownWidthIsNotAPass() => Jobs.Roughed().Forget("W01", WindowFacts.RoughWidth).Lacks(Check, "W01", "rough width");

    [Fact]
    public void TheWorkingTellsHalfTheWidth() => Assert.Equal("tail 17\", width 36\", half 18\"", string.Join(", ",
        Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "17").Fault(Check, "W01").Working!.Inputs.Select(i => $"{i.Name} {i.Value}")));

    [Fact]
    public void TheTailThatCountsIsTheOneToPutRight()
    {
        Assert.Equal("tail-at-window", Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "10").Fault(Check, "W01").Mends.Field);
        Assert.Equal("tail-found", Jobs.Roughed().Say("W01", RunFacts.TailFound, "10").Fault(Check, "W01").Mends.Field);
    }
}
