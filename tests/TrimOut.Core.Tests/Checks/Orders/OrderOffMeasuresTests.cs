using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Facts;
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
}
