using CsCheck;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class SquarenessTests
{
    // Cosine rule, solved independently: side length height, top shifted by the lean.
    [Theory]
    [InlineData(914.4, 1780.538197, 1774.004097, 6.35)]
    [InlineData(1200, 1924.058211, 1917.811252, 5)]
    [InlineData(1000, 1421.267040, 1407.124728, 10)]
    [InlineData(1200, 2166.665, 2160.008, 6)]
    public void TheLeanIsMet(double width, double d1, double d2, double lean) =>
        Assert.Equal((decimal)lean, Math.Round(Squareness.Lean(Mm(width), Mm(d1), Mm(d2)).Millimetres, 2));

    [Theory]
    [InlineData(36, 60, 69.971423)]
    [InlineData(48, 72, 86.533231)]
    [InlineData(3, 4, 5)]
    public void TrueRectanglesHaveTheseDiagonals(double width, double height, double diagonal) =>
        Assert.Equal((decimal)diagonal, Math.Round(Squareness.Diagonal(Length.FromInches((decimal)width), Length.FromInches((decimal)height)).Inches, 6));

    [Fact]
    public void AnyRackedOpeningGivesItsLeanBackAndKeepsTheParallelogramLaw() =>
        Gen.Select(Gen.Int[300, 3000], Gen.Int[300, 3000], Gen.Int[-50, 50]).Sample((width, side, lean) =>
    {
        var rise = Math.Sqrt((double)side * side - (double)lean * lean);
        var (d1, d2) = (Mm(Math.Sqrt(Math.Pow(width + lean, 2) + rise * rise)), Mm(Math.Sqrt(Math.Pow(width - lean, 2) + rise * rise)));
        Assert.Equal(lean, (double)Squareness.Lean(Mm(width), d1, d2).Millimetres, 1e-4);
        Assert.Equal((double)Squareness.Diagonal(Mm(width), Mm(side)).Millimetres, (double)Squareness.MeanDiagonal(d1, d2).Millimetres, 1e-4);
    });

    // Two diagonals of 70 in over a width of 35 in: each sixteenth of the tape counts for twice three quarters of it.
    [Fact]
    public void WhatATapeMayBeOffGrowsWithTheHeight() =>
        Assert.Equal(Length.FromInches(0.09375m),
            Squareness.LeanUnsure(Length.FromInches(35), Length.FromInches(70), Length.FromInches(70), TapeMark.Sixteenth));

    private static Length Mm(double millimetres) => Length.FromMillimetres((decimal)millimetres);
}
