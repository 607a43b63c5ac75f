using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Facts;
using TrimOut.Testing;
using static TrimOut.Core.Tests.Checks.Orders.GapBetweenUnitsTooSmallTests;

namespace TrimOut.Core.Tests.Checks.Orders;

public class GapBetweenUnitsTooLargeTests
{
    private static readonly GapBetweenUnitsTooLarge Check = new();

    public static Example Finds => new(() => Pair("18", "17 1/2"), j => j.Say("W01B", UnitFacts.OrderWidth, "17\""));

    public static Example Passes => new(() => Pair("18", "17 1/2"), j => j.Say("W01B", UnitFacts.OrderWidth, "17 3/4\""));

    // 36 in and at most 1/2 in between two (common practice, no published source).
    [Fact]
    public void TheLargestGapOfTheSheetIsFine() => Assert.IsType<Outcome.Fine>(Pair("18", "17 1/2").Of(Check, "W01"));

    [Fact]
    public void ASixtyFourthMoreIsACaution() =>
        Assert.Equal("9/16\" are left for 1 gap between the units; 1/2\" are the most.", Pair("18", "17 7/16").FaultOf(Check, "W01").Message);

    // Outside with 2 in of overlap each side 40 in are to be covered.
    [Fact]
    public void OutsideTheOverlapIsCoveredToo()
    {
        var job = Pair("20", "19 1/2").SayOf("W01", WindowFacts.Mount, "outside").SayOf("W01", WindowFacts.OverlapEachSide, "2");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        Assert.IsType<Outcome.Found>(job.Say("W01B", UnitFacts.OrderWidth, "19 31/64").Of(Check, "W01"));
    }

    [Fact]
    public void ASheetThatSaysNothingIsNotAPass() =>
        Assert.Equal("gap between units, at most of Roller in the kit", Pair("18", "17 1/2").SayOf("Roller", CoveringKindFacts.GapMost, "")
            .MissingOf(Check, "W01"));

    [Fact]
    public void ASingleUnitHasNoNeighbour() => Assert.Empty(Check.Run(Jobs.Ordered().House));

    // 36 in less 34 15/16 leave 1 1/16 in for two gaps of at most 1/2 in each.
    [Fact]
    public void OfThreeUnitsBothGapsCountTogether()
    {
        Assert.IsType<Outcome.Fine>(Three("12", "12", "11").Of(Check, "W01"));
        Assert.Equal("1 1/16\" are left for 2 gaps between the units; 1\" are the most.", Three("12", "12", "10 15/16").FaultOf(Check, "W01").Message);
    }

    [Fact]
    public void OnceOrderedTheStripIsCovered()
    {
        var job = Pair("18", "17 7/16");
        Assert.Equal("Order them 1/16\" wider, together.", job.FaultOf(Check, "W01").Mend);
        Assert.StartsWith("Ask the maker, or cover", job.Say("W01B", UnitFacts.OrderedOn, "2026-03-02").FaultOf(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorkingTellsEachUnit() => Assert.Equal(
        "opening 36\", W01A 18\", W01B 17 7/16\", both ends 0\", left for gaps 9/16\", gaps 1, at most 1/2\"",
        string.Join(", ", Pair("18", "17 7/16").FaultOf(Check, "W01").Working!.Inputs.Select(i => $"{i.Name} {i.Value}")));

    [Fact]
    public void TheLastOneIsOrderedWider()
    {
        var job = Pair("18", "17 7/16");
        Assert.Equal(FieldRef.To(job.Unit("W01B").Item, UnitFacts.OrderWidth), job.FaultOf(Check, "W01").Mends);
    }

    [Fact]
    public void WhatIsNotKnownIsNotAPass()
    {
        Assert.Equal("mount", Pair("18", "17").SayOf("W01", WindowFacts.Mount, "").MissingOf(Check, "W01"));
        var outside = Pair("18", "17").SayOf("W01", WindowFacts.Mount, "outside");
        Assert.Equal("overlap each side", outside.MissingOf(Check, "W01"));
        Assert.Equal("width, top", outside.SayOf("W01", WindowFacts.OverlapEachSide, "2").SayOf("W01", WindowFacts.WidthTop, "").MissingOf(Check, "W01"));
        Assert.Equal("order width of W01A", Pair("18", "17").Forget("W01A", UnitFacts.OrderWidth).MissingOf(Check, "W01"));
        Assert.Equal("end allowance of Roller in the kit", Pair("18", "17").SayOf("Roller", CoveringKindFacts.EndAllowance, "").MissingOf(Check, "W01"));
        Assert.Equal("kind", Pair("18", "17").Forget("W01B", UnitFacts.Kind).MissingOf(Check, "W01"));
    }
}
