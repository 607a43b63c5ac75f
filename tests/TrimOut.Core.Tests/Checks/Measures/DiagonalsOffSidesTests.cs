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
}
