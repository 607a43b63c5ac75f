using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>
/// The stack that a cellular shade or a blind makes at the head when it is raised: common practice, no published source; the sheet gives both parts.
/// </summary>
public static class Stack
{
    /// <summary>Height of the raised stack: fixed part + share x drop.</summary>
    /// <param name="fixedPart">Head and bottom bar, whatever the drop.</param>
    /// <param name="share">The part of the drop that the folded fabric or the slats take, 0 to 1.</param>
    /// <param name="drop">Height of the unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not between 0 and 1, or a length is negative.</exception>
    public static Length Height(Length fixedPart, decimal share, Length drop)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 1);
        return Refuse.Negative(fixedPart) + Refuse.Negative(drop) * Refuse.Negative(share);
    }
}
