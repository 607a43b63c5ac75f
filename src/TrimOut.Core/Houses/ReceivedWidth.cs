using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>What the width that was read of a box can be: a box is printed with the width that was ordered, a tape on the unit reads what was made.</summary>
public static class ReceivedWidth
{
    /// <summary>How far a delivered size may be off: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 16);

    /// <summary>
    /// Whether a unit reads as wide as it was ordered, while its maker makes it narrower, or may for all that its sheet says: the label of the right unit and
    /// a tape on one from which nothing was taken off read alike, and only what was read tells them apart.
    /// </summary>
    /// <param name="unit">A unit of which a box came.</param>
    public static bool IsOfLabelOrUncut(Unit unit) => unit.Item.Get(UnitFacts.OrderWidth) is { } ordered
        && unit.Item.Get(UnitFacts.DeliveredWidth) is { } read && IsAbout(read, ordered)
        && (unit.MadeFrom(ordered) is { } made ? !IsAbout(read, made) : unit.WidthUnsaid is not null);

    /// <summary>Whether a size that was read is another one, as far as a tape can tell.</summary>
    public static bool IsAbout(Length read, Length size) => (read - size).Abs() <= Tolerance;
}
