using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class OutOfSquareTests
{
    private static readonly OutOfSquare Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.DiagonalDown, "70 1/2\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.DiagonalDown, "70 1/8\""));

    [Fact]
    public void ASquareOpeningIsFine() => Jobs.Measured().Fine(Check, "W01");

    // 36 x 60 in leaning by 3/8 in has diagonals of 70.164644 and 69.778781 in (cosine rule).
    [Fact]
    public void ALeaningOpeningIsACaution()
    {
        var found = Diagonals("70.164644", "69.778781").Fault(Check, "W01");
        Assert.EndsWith("the top stands 3/8\" to one side.", found.Message, StringComparison.Ordinal);
        Assert.Contains(("lean", "0.375 in"), found.Working!.Inputs);
    }

    [Fact]
    public void DiagonalsAtTheLimitAreFine() => Diagonals("70 1/4", "70").Fine(Check, "W01");

    [Fact]
    public void DiagonalsJustPastItAreNot() => Diagonals("70 17/64", "70").Fault(Check, "W01");

    // The same diagonals, 1/4 in apart: by a width of 12 in they stand for a lean of 0.73 in.
    [Fact]
    public void ATallNarrowOpeningIsJudgedByItsLeanAndNotByItsDiagonals()
    {
        var job = Diagonals("70 1/4", "70");
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom])
            job.Say("W01", fact, "12");
        Assert.EndsWith("the top stands 3/4\" to one side.", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OfALeaningOpeningTheWidestThatHangsPlumbIsTold() => Assert.StartsWith(
        "Measure again; if it stays, what hangs plumb is 35 5/8\" wide at the most: order by that",
        Diagonals("70.164644", "69.778781").Fault(Check, "W01").Mend,
        StringComparison.Ordinal);

    [Fact]
    public void ALeanThatIsMoreThanWhatComesOffIsFoundUnderTheLimitToo() => Assert.EndsWith("and only 0\" come off the width of a unit.",
        Diagonals("70 1/4", "70").SayOf("Roller", CoveringKindFacts.DeductionInside, "0").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void AnOutsideMountHidesWhatItOverlaps()
    {
        var job = Diagonals("70.164644", "69.778781").Say("W01", WindowFacts.Mount, "outside");
        job.Lacks(Check, "W01", "overlap each side");
        job.Say("W01", WindowFacts.OverlapEachSide, "3/8").Say("W01", WindowFacts.HeadAbove, "3").Fine(Check, "W01");
        job.Say("W01", WindowFacts.OverlapEachSide, "5/16").Fault(Check, "W01");
    }

    [Fact]
    public void EqualDiagonalsWithAnUnlikeTopAndBottomAreStillFound() =>
        Assert.Equal("The top is 35\" wide and the bottom 36\": the sides are not parallel, though the diagonals agree.",
            Jobs.Measured().Say("W01", WindowFacts.WidthTop, "35").Fault(Check, "W01").Message);

    [Fact]
    public void UnlikeSidesAreFound() =>
        Assert.Contains("head and sill are not parallel", Jobs.Measured().Say("W01", WindowFacts.HeightRight, "60 5/16").Fault(Check, "W01").Message,
            StringComparison.Ordinal);

    [Fact]
    public void AnUnknownDiagonalIsNotAPass() => Jobs.Measured().Forget("W01", WindowFacts.DiagonalUp).Lacks(Check, "W01", "diagonal, bottom left");

    private static TestJob Diagonals(string down, string up) =>
        Jobs.Measured().Say("W01", WindowFacts.DiagonalDown, down).Say("W01", WindowFacts.DiagonalUp, up);

    [Fact]
    public void DiagonalsThatNoOpeningHasGiveNoWidthToOrder() =>
        Assert.Null(Jobs.Measured().Say("W01", WindowFacts.DiagonalDown, "120").Unit("W01").Window.PlumbWidth);

    [Theory]
    [InlineData("width-top", "width, top")]
    [InlineData("width-bottom", "width, bottom")]
    [InlineData("height-left", "height, left")]
    [InlineData("height-right", "height, right")]
    [InlineData("diagonal-down", "diagonal, top left")]
    public void WhatIsNotMeasuredIsNamed(string without, string missing) =>
        Jobs.Measured().Forget("W01", FactTable.Find(Core.Houses.ItemKind.Window, without)!).Lacks(Check, "W01", missing);

    [Fact]
    public void OutsideWhatIsHiddenAboveIsAskedForToo() => Jobs.Measured().Say("W01", WindowFacts.Mount, "outside")
        .Say("W01", WindowFacts.OverlapEachSide, "2").Lacks(Check, "W01", "head above");

    // 70 1/8^2 - 69 7/8^2 over 4 x 35 in is a lean of 1/4 in, which is the limit; a height of 60 5/8 in goes with diagonals of 70.
    [Theory]
    [InlineData("70 1/8", true)]
    [InlineData("70 3/16", false)]
    public void ALeanOfTheLimitIsFine(string down, bool fine)
    {
        var job = Diagonals(down, "69 7/8");
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom])
            job.Say("W01", fact, "35");
        foreach (var fact in (Fact[])[WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight])
            job.Say("W01", fact, "60 5/8");
        Assert.Equal(fine, job.Judge(Check, "W01") is Core.Checks.Outcome.Fine);
    }

    // A lean of 70 1/4^2 - 70^2 over 4 x 36, 0.24 in, is under the limit, and whether a unit hangs plumb in it is for what comes off to say.
    [Fact]
    public void WhatComesOffIsAskedForOnlyWhereItLeans()
    {
        Diagonals("70 1/4", "70").SayOf("Roller", CoveringKindFacts.DeductionInside, "").Lacks(Check, "W01", "deduction, inside of Roller in the kit");
        Jobs.Measured().SayOf("Roller", CoveringKindFacts.DeductionInside, "").Fine(Check, "W01");
    }

    [Fact]
    public void TheWorkingTellsWhatComesOff()
    {
        var job = Diagonals("70.164644", "69.778781");
        Assert.Contains(("comes off the width", "1/4\""), job.Fault(Check, "W01").Working!.Inputs);
        Assert.Contains(("comes off the width", "not known"),
            job.SayOf("Roller", CoveringKindFacts.DeductionInside, "").Fault(Check, "W01").Working!.Inputs);
    }

    // 1/4 in is the limit of a new house for sides, and for head and sill.
    [Theory]
    [InlineData("width-bottom", "36 1/4", "")]
    [InlineData("width-bottom", "36 5/16", "The top is 36\" wide and the bottom 36 5/16\"")]
    [InlineData("width-top", "36 5/16", "The top is 36 5/16\" wide and the bottom 36\"")]
    [InlineData("height-left", "60 1/4", "")]
    [InlineData("height-left", "60 5/16", "The left side is 60 5/16\" high and the right 60\"")]
    public void WhatIsNotParallelIsFoundPastTheLimit(string fact, string typed, string said)
    {
        var job = Jobs.Measured().Say("W01", FactTable.Find(Core.Houses.ItemKind.Window, fact)!, typed);
        if (said.Length == 0)
            job.Fine(Check, "W01");
        else
            Assert.StartsWith(said, job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void TheMendIsOneForWhatIsOff()
    {
        Assert.StartsWith("Measure again; if it stays, what hangs plumb is ",
            Jobs.Measured().Say("W01", WindowFacts.WidthTop, "35").Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Measure again; if it stays, shim the trim, or mount outside",
            Jobs.Measured().Say("W01", WindowFacts.HeightLeft, "61").Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Measure again; if it stays, let the unit reach farther",
            Jobs.Measured().Say("W01", WindowFacts.HeightLeft, "61").Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "1/2")
                .Say("W01", WindowFacts.HeadAbove, "1/2").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void SidesAndHeadAreTwoFindings() => Assert.Equal(2,
        Check.Run(Jobs.Measured().Say("W01", WindowFacts.WidthTop, "35").Say("W01", WindowFacts.HeightLeft, "61").House).Count());

    [Fact]
    public void AHouseWithoutALimitIsNotAPass() =>
        Jobs.Measured().SayOf("", HouseFacts.SquareLimit, "").Lacks(Check, "W01", $"{HouseFacts.SquareLimit.Label.ToLowerInvariant()} of the house");

    [Fact]
    public void TheWorkingTellsWhatWasMeasured()
    {
        var worked = Jobs.Measured().Say("W01", WindowFacts.HeightLeft, "61").Fault(Check, "W01").Working!.Inputs;
        Assert.Equal([("diagonals", "69 31/32\" and 69 31/32\""), ("top and bottom", "36\" and 36\""), ("left and right", "61\" and 60\""),
            ("lean", "0 in")], worked.Take(4));
        Assert.Contains(("limit", "1/4\""), worked);
    }

    // The same lean by the same mean width: a waiver of it is none of sides that are not parallel besides, and holds within the limit of those.
    [Fact]
    public void ALeanWithSidesThatAreNotParallelIsAnotherFinding()
    {
        string Figures(string top, string bottom) => Diagonals("70.164644", "69.778781").Say("W01", WindowFacts.WidthTop, top)
            .Say("W01", WindowFacts.WidthBottom, bottom).Fault(Check, "W01").Found.Message.Figures;
        Assert.Equal(Figures("36", "36"), Figures("36 1/16", "35 15/16"));
        Assert.NotEqual(Figures("36", "36"), Figures("36 1/4", "35 3/4"));
        Assert.NotEqual(Figures("36 5/16", "35 11/16"), Figures("36 1/4", "35 3/4"));
    }
}
