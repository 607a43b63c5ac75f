using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The size to order from the measures of an opening: common practice, no published source. The maker's sheet gives the step.</summary>
public static class OrderSize
{
    /// <summary>
    /// Inside mount, so that it goes in and hangs plumb: the smallest of the three widths, rounded down. What is made of it must not be wider than what hangs
    /// plumb: where the maker takes something off, that covers a lean; where the made width is ordered, it comes off here.
    /// </summary>
    /// <param name="smallest">The smallest of the three widths.</param>
    /// <param name="plumb">The widest that hangs plumb.</param>
    /// <param name="ordered">Whether the maker is given the opening or the made width; null while the sheet does not say.</param>
    /// <param name="deduction">What comes off; null while the sheet does not say.</param>
    /// <param name="step">The step of the sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no length or no step, or what comes off is negative.</exception>
    public static Length InsideWidth(Length smallest, Length plumb, OrderedWidth? ordered, Length? deduction, Length step)
    {
        _ = Refuse.NothingOrLess(smallest);
        var width = (ordered, deduction) switch
        {
            (OrderedWidth.Opening, { } off) => Length.Min(smallest, plumb + Refuse.Negative(off)),
            (OrderedWidth.Made, { } off) => Length.Min(smallest - Refuse.Negative(off), plumb),
            _ => smallest,
        };
        return width.RoundDown(step);
    }

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
