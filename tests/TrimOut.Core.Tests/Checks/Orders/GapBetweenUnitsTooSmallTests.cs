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

    internal static TestJob Three(string left, string middle, string right)
    {
        var job = Pair(left, middle);
        return job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01C", UnitFacts.Kind, "Roller").Say("W01C", UnitFacts.OrderWidth, right);
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

    // The opening is counted at its narrowest, and the lean of plane geometry, (70 5/16^2 - 69 11/16^2) / (4 x 36), leaves 35.39 in of it.
    [Theory]
    [InlineData("18", "18", "36", "0\" are left for 1 gap; the sheet asks for 1/8\".")]
    [InlineData("18", "18 1/16", "36", "The 2 units and their ends take 36 1/16\"; the opening is 36\" at its narrowest.")]
    [InlineData("18", "17 1/2", "leans", "The 2 units and their ends take 35 1/2\"; 35 3/8\" hang plumb in the opening.")]
    [InlineData("18", "17 15/16", "36 1/2", "1/16\" are left for 1 gap; the sheet asks for 1/8\".")]
    public void WhatIsLeftIsToldByWhatLimitsIt(string left, string right, string bottom, string message)
    {
        var job = Pair(left, right);
        if (bottom == "leans")
            job.Say("W01", WindowFacts.DiagonalDown, "70 5/16").Say("W01", WindowFacts.DiagonalUp, "69 11/16");
        else
            job.Say("W01", WindowFacts.WidthBottom, bottom);
        Assert.Equal(message, job.FaultOf(Check, "W01").Message);
    }

    // 36 in less 35 13/16 leave 3/16 in for two gaps of 1/8 in.
    [Fact]
    public void OfThreeUnitsBothGapsCountTogether()
    {
        Assert.IsType<Outcome.Fine>(Three("12", "12", "11 3/4").Of(Check, "W01"));
        Assert.Equal("3/16\" are left for 2 gaps; the sheet asks for 1/4\".", Three("12", "12", "11 13/16").FaultOf(Check, "W01").Message);
    }

    // 1/8 in is asked for. Only what is ordered wider than its part is told, where its part leaves the gap; else what the parts are too wide by.
    [Theory]
    [InlineData("18", "17 7/8", "18", "18", "Order W01B 17 7/8\" wide, as the parts give it.", "W01B")]
    [InlineData("17 7/8", "18", "18", "18", "Order W01A 17 7/8\" wide, as the parts give it.", "W01A")]
    [InlineData("18", "18", "18 1/8", "18", "Take 1/8\" off the parts, together, the gap between them included, and order what they give then.", "W01A")]
    [InlineData("", "", "18", "17 15/16", "Take 1/16\" off the parts, together, the gap between them included, and order what they give then.", "W01B")]
    public void TheMendIsTheLeastThatLeavesTheGap(string leftPart, string rightPart, string left, string right, string mend, string at)
    {
        var job = Pair(left, right);
        if (leftPart.Length > 0)
            job.Say("W01A", UnitFacts.PartWidth, leftPart).Say("W01B", UnitFacts.PartWidth, rightPart);
        var found = job.FaultOf(Check, "W01");
        Assert.Equal(mend, found.Mend);
        Assert.Equal(FieldRef.To(job.Unit(at).Item, UnitFacts.OrderWidth), found.Mends);
    }

    [Fact]
    public void OnceOrderedTheMakerIsCalledUntilOneOfThemHangs()
    {
        var job = Pair("18", "18").Say("W01B", UnitFacts.OrderedOn, "2026-03-02");
        Assert.StartsWith("Call the maker today", job.FaultOf(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("They hang:", job.Mark("W01A", "clicked-in").FaultOf(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorkingTellsEachUnit() => Assert.Equal(
        "opening 36\", W01A 18\", W01B 17 15/16\", both ends 0\", left for gaps 1/16\", gaps 1, asked for 1/8\"",
        string.Join(", ", Pair("18", "17 15/16").FaultOf(Check, "W01").Working!.Inputs.Select(i => $"{i.Name} {i.Value}")));
}
