using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The size to order from the measures of an opening: common practice, no published source. The maker's sheet gives the step.</summary>
public static class OrderSize
{
    /// <summary>Inside mount: the smallest of the three widths, rounded down, so that it goes in.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no length or no step.</exception>
    public static Length InsideWidth(Length smallest, Length step) => Refuse.NothingOrLess(smallest).RoundDown(step);

    /// <summary>Inside mount: the largest of the three heights, rounded up, so that it reaches the sill.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no length or no step.</exception>
    public static Length InsideHeight(Length largest, Length step) => Refuse.NothingOrLess(largest).RoundUp(step);

    /// <summary>Outside mount: the largest of the three widths and the overlap on both sides, rounded up, so that it covers.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no width or no step, or the overlap is negative.</exception>
    public static Length OutsideWidth(Length largest, Length overlapEachSide, Length step) =>
        (Refuse.NothingOrLess(largest) + Refuse.Negative(overlapEachSide) * 2).RoundUp(step);

    /// <summary>Outside mount: the largest of the three heights and what is above the opening, rounded up.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no height or no step, or what is above is negative.</exception>
    public static Length OutsideHeight(Length largest, Length above, Length step) => (Refuse.NothingOrLess(largest) + Refuse.Negative(above)).RoundUp(step);
}
