using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>A stretch along the head of an opening, from its left.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public readonly record struct Stretch(Length From, Length To)
{
    /// <summary>The part that each of several units has of an opening, from the left: their parts in their order, both ends kept clear, what is left spread
    /// evenly between them.</summary>
    /// <param name="opening">Width of the opening.</param>
    /// <param name="parts">Their widths, from the left.</param>
    /// <param name="left">What the first stays clear of the left jamb.</param>
    /// <param name="right">What the last stays clear of the right jamb.</param>
    public static IReadOnlyList<Stretch> SideBySide(Length opening, IReadOnlyList<Length> parts, Length left, Length right)
    {
        var rest = Units.Length.Max(Geometry.SideBySide.LeftForGaps(opening, parts, left + right), Units.Length.Zero);
        var gap = parts.Count > 1 ? rest / (parts.Count - 1) : Units.Length.Zero;
        var stretches = new List<Stretch>();
        var at = left;
        foreach (var part in parts)
        {
            stretches.Add(new Stretch(at, at + part));
            at += part + gap;
        }
        return stretches;
    }
}
