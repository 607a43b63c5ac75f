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

    // 36 x 60 in leaning by 1/4 in has diagonals of 70.099929 and 69.842681 in (cosine rule): 0.257248 in apart, past the limit of 1/4 in.
    [Fact]
    public void ALeaningOpeningIsACaution()
    {
        var found = Diagonals("70.099929", "69.842681").Fault(Check, "W01");
        Assert.EndsWith("the top stands 0.25 in to one side.", found.Message, StringComparison.Ordinal);
        Assert.Contains(("lean", "0.25 in"), found.Working!.Inputs);
    }

    [Fact]
    public void DiagonalsAtTheLimitAreFine() => Diagonals("70 1/4", "70").Fine(Check, "W01");

    [Fact]
    public void DiagonalsJustPastItAreNot() => Diagonals("70 17/64", "70").Fault(Check, "W01");

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
}
