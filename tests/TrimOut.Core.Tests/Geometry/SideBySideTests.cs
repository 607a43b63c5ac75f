using CsCheck;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class SideBySideTests
{
    [Fact]
    public void WhatIsLeftIsForTheGaps() =>
        Assert.Equal(Inches(0.75m), SideBySide.LeftForGaps(Inches(100), [Inches(49), Inches(50)], Inches(0.25m)));

    [Fact]
    public void BetweenUnlikeKindsTheLargerGapCounts() =>
        Assert.Equal(Inches(0.75m), SideBySide.ForAllGaps([Inches(0.25m), Inches(0.5m), Inches(0.125m)]) - Inches(0.25m));

    [Fact]
    public void OneUnitHasNoGap() => Assert.Equal(Length.Zero, SideBySide.ForAllGaps([Inches(1)]));

    [Fact]
    public void ALargerOpeningLeavesMore() => Gen.Select(Gen.Int[1, 5000], Gen.Int[1, 5000], Gen.Int[1, 900].Array[1, 5]).Sample((a, b, widths) =>
        Assert.Equal(a <= b, Left(a, widths) <= Left(b, widths)));

    private static Length Left(int opening, int[] widths) =>
        SideBySide.LeftForGaps(Length.FromMillimetres(opening), widths.Select(w => Length.FromMillimetres(w)), Length.Zero);

    private static Length Inches(decimal inches) => Length.FromInches(inches);
}
