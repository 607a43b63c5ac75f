using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The space that a bracket takes up: along the head from the side of the opening, back from the room face, down from the head.</summary>
/// <param name="From">Where it begins along the head.</param>
/// <param name="To">Where it ends along the head.</param>
/// <param name="Front">Its front, back from the room face.</param>
/// <param name="Back">Its back, back from the room face.</param>
/// <param name="Down">How far it reaches down from the head.</param>
public readonly record struct Footprint(Length From, Length To, Length Front, Length Back, Length Down)
{
    /// <summary>Whether a cable that comes out at a point is caught behind it. On the edge it is clear.</summary>
    public bool Covers(Length along, Length back, Length belowHead) =>
        (along > From || From == Length.Zero) && along < To && back > Front && back < Back && belowHead < Down;
}
