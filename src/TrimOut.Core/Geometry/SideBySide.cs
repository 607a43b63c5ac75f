using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>Several units side by side in one opening: what is left between them.</summary>
public static class SideBySide
{
    /// <summary>What is left for all gaps together: opening - ordered widths - both end allowances. Negative when they do not go in.</summary>
    /// <param name="opening">The width that they share.</param>
    /// <param name="widths">Their ordered widths.</param>
    /// <param name="ends">Both end allowances together.</param>
    public static Length LeftForGaps(Length opening, IEnumerable<Length> widths, Length ends) =>
        widths.Aggregate(opening - ends, (left, width) => left - width);

    /// <summary>What neighbours ask of all gaps together: for each pair the larger of its two sheets.</summary>
    /// <param name="each">What each unit's sheet asks, from the left.</param>
    public static Length ForAllGaps(IReadOnlyList<Length> each) =>
        each.Zip(each.Skip(1)).Aggregate(Length.Zero, (sum, pair) => sum + Length.Max(pair.First, pair.Second));
}
