using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class OrderOffMeasuresTests
{
    private static readonly OrderOffMeasures Check = new();

    public static Example Finds => new(() => Jobs.Ordered(), j => j.Say("W01", UnitFacts.OrderWidth, "35 1/2\""));

    public static Example Passes => new(() => Jobs.Ordered(), j => j.Say("W01", WindowFacts.WidthTop, "36 1/16\""));

    // Smallest width down, largest height up, to 1/8 in: common practice, no published source.
    [Fact]
    public void WhatIsWorkedOutIsFine() =>
        Jobs.Ordered().Say("W01", WindowFacts.WidthTop, "36 1/16").Say("W01", WindowFacts.WidthMiddle, "36 1/8").Say("W01", WindowFacts.WidthBottom, "36 1/4")
        .Fine(Check, "W01");

    [Fact]
    public void WidthsGoDownAndHeightsGoUp() =>
        Assert.Equal("The order size is 36\" x 60\"; the measures give 35 7/8\" x 60 1/8\".",
            Jobs.Ordered().Say("W01", WindowFacts.WidthBottom, "35 63/64").Say("W01", WindowFacts.HeightRight, "60 1/64").Fault(Check, "W01").Message);

    [Fact]
    public void AnOutsideMountCoversWhatItOverlaps()
    {
        // 36 1/4 + 2 x 3 and 60 + 4.
        var job = Jobs.Measured().Say("W01", WindowFacts.WidthTop, "36 1/4").Say("W01", WindowFacts.Mount, "outside")
            .Say("W01", WindowFacts.OverlapEachSide, "3").Say("W01", WindowFacts.HeadAbove, "4").Say("W01", UnitFacts.OrderWidth, "42 1/4")
            .Say("W01", UnitFacts.OrderHeight, "64");
        job.Fine(Check, "W01");
        job.Say("W01", UnitFacts.OrderHeight, "60").Fault(Check, "W01");
    }

    [Fact]
    public void WhatHangsPastTheSillOnTheFaceOfTheWallMayBeWanted()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "3")
            .Say("W01", WindowFacts.HeadAbove, "4").Say("W01", UnitFacts.OrderWidth, "42").Say("W01", UnitFacts.OrderHeight, "65 1/2");
        Assert.StartsWith("It comes 1 1/2\" past the sill. If that is wanted", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Take the size", job.Say("W01", UnitFacts.OrderHeight, "63").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void AHeightThatIsOffDoesNotWaitForTheWidth()
    {
        var job = Jobs.Ordered().Forget("W01", UnitFacts.OrderWidth);
        job.Lacks(Check, "W01", "order width");
        Assert.Equal("The order height is 55\"; the measures give 60\".", job.Say("W01", UnitFacts.OrderHeight, "55").Fault(Check, "W01").Message);
    }

    [Fact]
    public void AWidthThatIsOffDoesNotWaitForTheHeight()
    {
        var job = Jobs.Ordered().Forget("W01", UnitFacts.OrderHeight);
        job.Lacks(Check, "W01", "order height");
        Assert.Equal("The order width is 35\"; the measures give 36\".", job.Say("W01", UnitFacts.OrderWidth, "35").Fault(Check, "W01").Message);
    }

    [Fact]
    public void AnUnknownStepIsNotAPass() =>
        Jobs.Ordered().SayOf("Roller", CoveringKindFacts.RoundTo, "").Lacks(Check, "W01", "order step of Roller in the kit");

    [Fact]
    public void AnOrderWithoutASizeIsNotAPass() => Jobs.Measured().Lacks(Check, "W01", "order width");

    [Theory]
    [InlineData("mount", "mount")]
    [InlineData("height-left", "height, left")]
    [InlineData("width-top", "width, top")]
    public void WhatTheSizeWaitsForIsNamed(string without, string missing) =>
        Jobs.Ordered().Forget("W01", FactTable.Find(ItemKind.Window, without)!).Lacks(Check, "W01", missing);

    [Fact]
    public void WhatAnOutsideSizeWaitsForIsNamed()
    {
        var job = Jobs.Ordered().Say("W01", WindowFacts.Mount, "outside");
        job.Lacks(Check, "W01", "overlap each side");
        job.Say("W01", WindowFacts.OverlapEachSide, "0").Lacks(Check, "W01", "head above");
    }

    [Fact]
    public void OfSeveralUnitsEachWaitsForItsPart()
    {
        var job = Jobs.Ordered().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        job.Lacks(Check, "W01A", "part of the opening");
        job.Say("W01A", UnitFacts.PartWidth, "36").Forget("W01", WindowFacts.HeightLeft).Lacks(Check, "W01A", "height, left");
    }

    // What is made of an ordered opening is the same whatever comes off, unless it leans; where it is not said what is ordered, a made width is 1/4 in less.
    [Fact]
    public void WhatTheSheetLeavesOpenIsAskedForOnlyWhereItCounts()
    {
        Jobs.Ordered().SayOf("Roller", CoveringKindFacts.OrderedInside, "").Lacks(Check, "W01", "ordered width, inside of Roller in the kit");
        var job = Jobs.Ordered().SayOf("Roller", CoveringKindFacts.DeductionInside, "");
        job.Fine(Check, "W01");
        job.Say("W01", WindowFacts.DiagonalDown, "1780.538197 mm").Say("W01", WindowFacts.DiagonalUp, "1774.004097 mm")
            .Lacks(Check, "W01", "deduction, inside of Roller in the kit");
        job.Forget("W01", WindowFacts.DiagonalUp).Fine(Check, "W01");
    }

    // Outside 36 + 2 x 3 by 60 + 4 in are to be ordered.
    [Theory]
    [InlineData("41", "65 1/2", "Take the size", "order-width")]
    [InlineData("41", "64", "Take the size", "order-width")]
    [InlineData("42", "65 1/2", "It comes 1 1/2\" past the sill.", "order-height")]
    [InlineData("", "65 1/2", "It comes 1 1/2\" past the sill.", "order-height")]
    [InlineData("41", "", "Take the size", "order-width")]
    public void OnlyAHeightThatAloneIsOffMayBeWanted(string width, string height, string mend, string field)
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "3")
            .Say("W01", WindowFacts.HeadAbove, "4");
        foreach (var (fact, typed) in new[] { (UnitFacts.OrderWidth, width), (UnitFacts.OrderHeight, height) }.Where(t => t.Item2.Length > 0))
            job.Say("W01", fact, typed);
        var found = job.Fault(Check, "W01");
        Assert.StartsWith(mend, found.Mend, StringComparison.Ordinal);
        Assert.Equal(field, found.Mends.Field);
        Assert.StartsWith("Compare it with the acknowledgement", job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01").Mend,
            StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorkingTellsBothSizesAndTheStep() => Assert.Equal("worked out 36\" x 60\", ordered 35 1/2\" x 60\", step 1/8\"",
        string.Join(", ", Jobs.Ordered().Say("W01", UnitFacts.OrderWidth, "35 1/2").Fault(Check, "W01").Working!.Inputs.Select(i => $"{i.Name} {i.Value}")));
}
