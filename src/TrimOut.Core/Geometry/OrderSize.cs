using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The size to order from the measures of an opening: common practice, no published source. The maker's sheet gives the step.</summary>
public static class OrderSize
{
    /// <summary>Inside mount: the smallest of the three widths, rounded down, so that it goes in.</summary>
    public static Length InsideWidth(Length smallest, Length step) => smallest.RoundDown(step);

    /// <summary>Inside mount: the largest of the three heights, rounded up, so that it reaches the sill.</summary>
    public static Length InsideHeight(Length largest, Length step) => largest.RoundUp(step);

    /// <summary>Outside mount: the largest of the three widths and the overlap on both sides, rounded up, so that it covers.</summary>
    public static Length OutsideWidth(Length largest, Length overlapEachSide, Length step) => (largest + overlapEachSide * 2).RoundUp(step);

    /// <summary>Outside mount: the largest of the three heights and what is above the opening, rounded up.</summary>
    public static Length OutsideHeight(Length largest, Length above, Length step) => (largest + above).RoundUp(step);
}
