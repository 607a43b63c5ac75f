using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The widest that hangs plumb and level in an opening whose sides lean.</summary>
public static class PlumbWidth
{
    /// <summary>What is free from head to sill, reckoned in the plane of the opening from three widths and both diagonals.</summary>
    /// <param name="top">Width at the top.</param>
    /// <param name="middle">Width at the middle; what it is narrower than the mean of the others is taken as a bow of both jambs alike.</param>
    /// <param name="bottom">Width at the bottom.</param>
    /// <param name="down">The diagonal from the top left.</param>
    /// <param name="up">The diagonal from the bottom left.</param>
    /// <remarks>
    /// Plane geometry. With b the bottom and t the top width, the mean lean is m = (up^2 - down^2) / (2 (b + t)); the left jamb leans by
    /// l = m - (t - b) / 2 to the right and the right jamb by r = m + (t - b) / 2. Free is min(b, b + r, b + r / 2 - c) - max(0, l, l / 2 + c) with
    /// c = (b + t) / 4 - middle / 2. In a parallelogram that is its width less its lean.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no width, or a diagonal is negative.</exception>
    public static Length Of(Length top, Length middle, Length bottom, Length down, Length up)
    {
        var (t, b) = (Refuse.NothingOrLess(top), Refuse.NothingOrLess(bottom));
        var lean = -Squareness.Lean((t + b) / 2, down, up);
        var (left, right) = (lean - (t - b) / 2, lean + (t - b) / 2);
        var bow = (t + b) / 4 - Refuse.NothingOrLess(middle) / 2;
        return Length.Min(b, Length.Min(b + right, b + right / 2 - bow)) - Length.Max(Length.Zero, Length.Max(left, left / 2 + bow));
    }
}
