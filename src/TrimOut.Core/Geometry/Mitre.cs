using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>One side of a corner: where the unit's end is, and how far it stands out.</summary>
/// <param name="FromCorner">From its end to the corner, along its wall; negative past the corner.</param>
/// <param name="StandsOut">How far it stands out from its wall into the room.</param>
public readonly record struct CornerSide(Length FromCorner, Length StandsOut);

/// <summary>Two units on two walls that meet at an angle, seen from above: each is a rectangle along its wall.</summary>
public static class Mitre
{
    /// <summary>The smallest angle that can be judged: a square corner, in degrees inside the room.</summary>
    public const decimal LeastAngle = 90;

    /// <summary>The largest, of a corner that points into the room.</summary>
    public const decimal MostAngle = 270;

    /// <summary>
    /// How far two units that stand out alike must each stay from the corner: stands out / tan(angle / 2), where their fronts meet. Nothing from a straight
    /// wall on.
    /// </summary>
    /// <param name="standsOut">How far both stand out.</param>
    /// <param name="angle">Degrees between the walls inside the room, 90 to 270.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range, or what stands out is negative.</exception>
    public static Length FromCorner(Length standsOut, decimal angle) =>
        Check(angle) >= 180 ? Length.Zero : Length.FromMillimetres((decimal)((double)Refuse.Negative(standsOut).Millimetres / Math.Tan(Radians(angle) / 2)));

    /// <summary>How much farther from the corner one of the two would have to end for both to be clear; nothing when they are.</summary>
    /// <param name="mine">The unit that is moved.</param>
    /// <param name="other">The one that stays.</param>
    /// <param name="angle">Degrees between the walls inside the room, 90 to 270.</param>
    /// <remarks>
    /// Two rectangles are apart when a side of one has the other wholly beyond it. Near the corner four sides can do that: with a the
    /// distance from the corner, d how far it stands out and t the angle, mine ends before the other begins when
    /// a1 >= a2 cos t + d2 sin t, the other begins beyond its front when a2 sin t >= d1, and both the other way round.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    public static Length Short(CornerSide mine, CornerSide other, decimal angle)
    {
        if (Check(angle) >= 180 || mine.StandsOut <= Length.Zero || other.StandsOut <= Length.Zero)
            return Length.Zero;
        var (sine, cosine) = (Math.Sin(Radians(angle)), Math.Cos(Radians(angle)));
        var (a1, d1, a2, d2) = (Mm(mine.FromCorner), Mm(mine.StandsOut), Mm(other.FromCorner), Mm(other.StandsOut));
        // A hair of tolerance, so that what just touches is not called a clash for the last digit of a sine.
        const double Hair = 1e-6;
        if (a2 * sine >= d1 - Hair || a2 >= a1 * cosine + d1 * sine - Hair)
            return Length.Zero;
        var least = Math.Min(a2 * cosine + d2 * sine, d2 / sine);
        if (cosine < -Hair)
            least = Math.Min(least, (a2 - d1 * sine) / cosine);
        return a1 >= least - Hair ? Length.Zero : Length.FromMillimetres((decimal)(least - a1));
    }

    private static decimal Check(decimal angle) => angle is >= LeastAngle and <= MostAngle ? angle
        : throw new ArgumentOutOfRangeException(nameof(angle), angle, "A corner of a room has 90 to 270 degrees.");

    private static double Radians(decimal degrees) => (double)degrees * Math.PI / 180;

    private static double Mm(Length length) => (double)length.Millimetres;
}
