using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class DiagonalsOffSidesTests
{
    private static readonly DiagonalsOffSides Check = new();

    public static Example Finds => new(() => Box("60"), j => j.Say("W01", WindowFacts.DiagonalDown, "62\""));

    public static Example Passes => new(() => Box("60"), j => j.Say("W01", WindowFacts.DiagonalDown, "60 1/8\""));

    // 36 x 48 in has diagonals of 60 in exactly (3-4-5).
    [Fact]
    public void ThreeSixteenthsOffAreFine() => Box("60 3/16").Fine(Check, "W01");

    [Fact]
    public void ALittleMoreIsAMisreadTape() =>
        Assert.Equal("The diagonals stand for 60 1/4\", the widths and heights for 60\": one of them is misread.", Box("60 1/4")
            .Fault(Check, "W01").Message);

    [Fact]
    public void AnUnknownDiagonalIsNotAPass() => Box("60").Forget("W01", WindowFacts.DiagonalDown).Lacks(Check, "W01", "diagonal, top left");

    private static TestJob Box(string diagonal) => Jobs.Measured()
        .Say("W01", WindowFacts.HeightLeft, "48").Say("W01", WindowFacts.HeightMiddle, "48").Say("W01", WindowFacts.HeightRight, "48")
        .Say("W01", WindowFacts.DiagonalDown, diagonal).Say("W01", WindowFacts.DiagonalUp, diagonal);

    [Fact]
    public void TheWorkingTellsTheMeans() => Assert.Equal(
        "mean width 36 in, mean height 48 in, diagonals 60 1/4\" and 60 1/4\", from the diagonals 60.25 in, from the sides 60 in",
        Box("60 1/4").Fault(Check, "W01").Worked);

    // 35 15/16, 36 and 36 1/16 in are 36 in at the mean, and so are 47, 48 and 49 in 48.
    [Fact]
    public void EachSideCountsByTheMeanOfItsThree() =>
        Box("60 3/16").Say("W01", WindowFacts.WidthTop, "35 15/16").Say("W01", WindowFacts.WidthBottom, "36 1/16").Say("W01", WindowFacts.HeightLeft, "47")
            .Say("W01", WindowFacts.HeightRight, "49").Fine(Check, "W01");

    [Fact]
    public void DiagonalsThatAreTooShortAreMisreadToo()
    {
        Box("59 13/16").Fine(Check, "W01");
        Box("59 3/4").Fault(Check, "W01");
    }

    [Theory]
    [InlineData("width-middle", "width, top")]
    [InlineData("height-middle", "height, left")]
    [InlineData("diagonal-up", "diagonal, top left")]
    public void WhatIsMissingIsNamed(string fact, string missing) =>
        Box("60").Forget("W01", FactTable.Find(Core.Houses.ItemKind.Window, fact)!).Lacks(Check, "W01", missing);
}
