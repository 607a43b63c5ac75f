using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The space that a bracket takes up: along the head from the left of the opening, back from the room face, down from the head.</summary>
/// <param name="From">Where it begins along the head; nothing where it stands at the left jamb.</param>
/// <param name="To">Where it ends along the head.</param>
/// <param name="Front">Its front, back from the room face.</param>
/// <param name="Back">Its back, back from the room face.</param>
/// <param name="Down">How far it reaches down from the head.</param>
public readonly record struct Footprint(Length From, Length To, Length Front, Length Back, Length Down)
{
    /// <summary>Whether a cable that comes out at a point is caught behind it. A hole that just touches its edge is clear.</summary>
    /// <param name="along">The middle of the hole, from the left of the opening.</param>
    /// <param name="back">The middle of the hole, back from the room face.</param>
    /// <param name="belowHead">The middle of the hole, down from the head.</param>
    /// <param name="radius">Half of what the hole is wide.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is negative.</exception>
    public bool Covers(Length along, Length back, Length belowHead, Length radius)
    {
        var beside = (double)Outside(along, From == Length.Zero ? -radius - To : From, To).Millimetres;
        var behind = (double)Outside(back, Front, Back).Millimetres;
        var below = (double)Outside(belowHead, -radius - Down, Down).Millimetres;
        var away = Math.Sqrt((beside * beside) + (behind * behind) + (below * below));
        // On the very edge of a bracket a cable of no width is clear.
        return Refuse.Negative(radius) == Length.Zero
            ? (along > From || From == Length.Zero) && along < To && back > Front && back < Back && belowHead < Down
            : away < (double)radius.Millimetres - 1e-9;
    }

    private static Length Outside(Length at, Length from, Length to) => at < from ? from - at : at > to ? at - to : Length.Zero;
}
