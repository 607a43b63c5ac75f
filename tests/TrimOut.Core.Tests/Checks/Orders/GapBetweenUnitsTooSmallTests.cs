using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class GapBetweenUnitsTooSmallTests
{
    private static readonly GapBetweenUnitsTooSmall Check = new();

    public static Example Finds => new(() => Pair("18", "17 1/2"), j => j.Say("W01B", UnitFacts.OrderWidth, "18\""));

    public static Example Passes => new(() => Pair("18", "17 1/2"), j => j.Say("W01B", UnitFacts.OrderWidth, "17 7/8\""));

    // 36 in, the generic gap of 1/8 in and no end allowance (common practice, no published source): 35 7/8 in for both.
    [Fact]
    public void TheGapOfTheSheetIsFine() => Assert.IsType<Outcome.Fine>(Pair("18", "17 7/8").Of(Check, "W01"));

    [Fact]
    public void ASixtyFourthLessIsAStop() =>
        Assert.Equal("1/16\" are left for 1 gap; the sheet asks for 1/8\".", Pair("18", "17 15/16").FaultOf(Check, "W01").Message);

    [Fact]
    public void WhatDoesNotGoInAtAllIsSaidSo() =>
        Assert.Equal("The 2 units and their ends take 36 1/16\"; the opening is 36\" at its narrowest.", Pair("18", "18 1/16").FaultOf(Check, "W01").Message);

    [Fact]
    public void EndsThatStayClearOfTheJambsTakeTheirPart()
    {
        var job = Pair("18", "17 1/2").SayOf("Roller", CoveringKindFacts.EndAllowance, "3/16");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        Assert.IsType<Outcome.Found>(job.SayOf("Roller", CoveringKindFacts.EndAllowance, "13/64").Of(Check, "W01"));
    }

    [Fact]
    public void OutsideThereIsWallToBothSides() => Assert.Empty(Check.Run(Pair("30", "30").SayOf("W01", WindowFacts.Mount, "outside").House));

    [Fact]
    public void AUnitThatIsNotOrderedYetIsNotAPass() => Assert.Equal("order width of W01B", Missing(Pair("18", "17").Forget("W01B", UnitFacts.OrderWidth)));

    [Fact]
    public void ASheetThatSaysNothingOfGapsIsNotAPass() =>
        Assert.Equal("gap between units of Roller in the kit", Missing(Pair("18", "17").SayOf("Roller", CoveringKindFacts.GapBetween, "")));

    [Fact]
    public void AnUnmeasuredOpeningIsNotAPass() => Assert.Equal("width, top", Missing(Pair("18", "17").SayOf("W01", WindowFacts.WidthTop, "")));

    [Fact]
    public void ASingleUnitHasNoNeighbour() => Assert.Empty(Check.Run(Jobs.Ordered().House));

    private static string Missing(TestJob job) => job.MissingOf(Check, "W01");

    internal static TestJob Pair(string left, string right)
    {
        var job = Jobs.Measured();
        return job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01B", UnitFacts.Kind, "Roller").Say("W01A", UnitFacts.OrderWidth, left)
            .Say("W01B", UnitFacts.OrderWidth, right);
    }

    [Fact]
    public void TheMendTakesTheSizesThatThePartsGive()
    {
        var job = Pair("18", "18").Say("W01A", UnitFacts.PartWidth, "17 7/8").Say("W01B", UnitFacts.PartWidth, "17 7/8");
        Assert.Equal("Order W01A 17 7/8\" wide, W01B 17 7/8\" wide, as the parts give it.", job.FaultOf(Check, "W01").Mend);
        job.Say("W01A", UnitFacts.OrderWidth, "17 7/8").Say("W01B", UnitFacts.OrderWidth, "17 7/8");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        Assert.IsType<Outcome.Fine>(job.Say("W01A", UnitFacts.OrderHeight, "60").Judge(new OrderOffMeasures(), "W01A"));
    }
}
