using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Measures;

/// <summary>What an outside mount hides of a crooked opening: as much as it reaches past it.</summary>
internal static class Hidden
{
    /// <summary>What may differ at the sides, and at the head: the limit of the house inside, and outside what the unit overlaps where that is more.</summary>
    /// <param name="window">The window.</param>
    /// <param name="limit">The limit of the house.</param>
    public static (Length? Sides, Length? Head) Limits(Window window, Length limit) => window.Mount != Mount.Outside ? (limit, limit)
        : (Past(window.Item.Get(WindowFacts.OverlapEachSide), limit), Past(window.Item.Get(WindowFacts.HeadAbove), limit));

    private static Length? Past(Length? overlap, Length limit) => overlap is { } there ? Length.Max(there, limit) : null;
}
