using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class PastWhatIsMadeTests
{
    private static readonly PastWhatIsMade Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.SayOf("Roller", CoveringKindFacts.Widest, "35\""));

    public static Example Passes => new(() => Jobs.Walked(), j => j.SayOf("Roller", CoveringKindFacts.Widest, "36\""));

    // Plaster and trim take 1/8 in of a rough size at the least.
    [Theory]
    [InlineData("35 7/8", "59 7/8")]
    [InlineData("40", "70")]
    public void ARoughSizeThatCanStillComeUnderItIsFine(string widest, string highest) => Made(Jobs.Walked(), widest, highest).Fine(Check, "W01");

    [Fact]
    public void AWindowThatIsTooWideForItsKindIsAStopWhileTheWallIsOpen()
    {
        var found = Made(Jobs.Walked(), "35 13/16", "70").Fault(Check, "W01");
        Assert.Equal("It is to be 35 7/8\" (36\" less 1/8\" for plaster and trim) wide; Roller is made up to 35 13/16\".", found.Message);
        Assert.Equal("Plan a kind that is made so wide, or several units side by side with a cable each, now while the wall is open.", found.Mend);
    }

    [Fact]
    public void AWindowThatIsTooHighForItsKindIsAStopToo() =>
        Assert.Equal("It is to be 59 7/8\" (60\" less 1/8\" for plaster and trim) high; Roller is made up to 59\".",
            Made(Jobs.Walked(), "40", "59").Fault(Check, "W01").Message);

    [Fact]
    public void AnOrderedSizeCountsWhole()
    {
        Made(Jobs.Ordered(), "36", "60").Fine(Check, "W01");
        Assert.Equal("It is to be 36\" wide; Roller is made up to 35 15/16\".", Made(Jobs.Ordered(), "35 15/16", "60").Fault(Check, "W01").Message);
    }

    [Fact]
    public void OutsideItCountsWithItsOverlaps()
    {
        var job = Made(Jobs.Walked(), "40", "70").Say("W01", WindowFacts.Mount, "outside");
        job.Lacks(Check, "W01", "overlap each side; head above");
        job.Say("W01", WindowFacts.OverlapEachSide, "0").Lacks(Check, "W01", "head above");
        job.Say("W01", WindowFacts.HeadAbove, "3").Say("W01", WindowFacts.OverlapEachSide, "3");
        Assert.Equal("It is to be 41 7/8\" (42\" less 1/8\" for plaster and trim) wide; Roller is made up to 40\".", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void WhatIsTooWideBeforeItsOverlapsAreKnownNeedNotWaitForThem()
    {
        var job = Made(Jobs.Walked(), "35", "59").Say("W01", WindowFacts.Mount, "outside");
        var said = Check.Run(job.House).Select(r => ((Outcome.Found)r.Outcome).Message.In(job.House));
        Assert.Equal(
        [
            "It is to be 35 7/8\" (36\" less 1/8\" for plaster and trim) wide, overlaps not counted; Roller is made up to 35\".",
            "It is to be 59 7/8\" (60\" less 1/8\" for plaster and trim) high, what is above the opening not counted; Roller is made up to 59\".",
        ], said);
    }

    [Fact]
    public void AKindWhoseSheetSaysNothingIsNotAPass() =>
        Jobs.Walked().SayOf("Roller", CoveringKindFacts.Widest, "").Lacks(Check, "W01", "widest of Roller in the kit");

    [Fact]
    public void WhatBothSizesWaitForIsNamedTogetherAndOnce()
    {
        Made(Jobs.Walked(), "", "").Lacks(Check, "W01", "widest of Roller in the kit; highest of Roller in the kit");
        Jobs.Walked().Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
    }

    private static TestJob Made(TestJob job, string widest, string highest) =>
        job.SayOf("Roller", CoveringKindFacts.Widest, widest).SayOf("Roller", CoveringKindFacts.Highest, highest);

    [Fact]
    public void TheMendIsThatOfTheMoment()
    {
        var job = Made(Jobs.Walked(), "35", "70").Mark("W01", "cable-found");
        Assert.StartsWith("Choose a kind that is made so wide before anything is ordered.", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Ask the maker today", job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("It hangs,", job.Mark("W01", "clicked-in").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    /// <summary>No sheet says what plaster takes: who reads the source is not to look for it there.</summary>
    [Fact]
    public void WhatPlasterTakesIsNoFigureOfTheMaker() => Assert.Equal(
        "the maker's sheet, as kept in the kit; what plaster and trim take is common practice, no published source", new PastWhatIsMade().Info.Source.Title);

    [Fact]
    public void AMeasuredOrAnOrderedSizeHasItsPlaster()
    {
        Made(Jobs.Measured(), "35 15/16", "70").Fault(Check, "W01");
        Made(Jobs.Walked().Say("W01", UnitFacts.OrderWidth, "36"), "35 15/16", "70").Fault(Check, "W01");
    }
}
