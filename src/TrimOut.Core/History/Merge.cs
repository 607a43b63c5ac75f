using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>What taking another copy's changes into a house does.</summary>
/// <param name="Merged">The history with both.</param>
/// <param name="New">The changes that only the other copy had, in their order.</param>
/// <param name="Disagreements">Facts on which copies disagree in what is merged, and did not in the house that it was taken into.</param>
/// <param name="Removals">What one copy removed while the other went on with it, where the house that it was taken into did not know that before.</param>
public sealed record Merge(HouseLog Merged, ImmutableArray<Change> New, ImmutableArray<Disagreement> Disagreements, ImmutableArray<RemovedAtWork> Removals)
{
    /// <summary>Names that two windows or two panels have now, and had not in the house that it was taken into.</summary>
    public ImmutableArray<string> Namesakes { get; private init; } = [];

    /// <summary>What copies disagree about now and this house did not before, with the ways out.</summary>
    public IEnumerable<Conflict> Conflicts =>
        Disagreements.Select(d => Conflict.Of(d, Merged.House)).Concat(Removals.Select(r => Conflict.Of(r, Merged.House)));

    /// <summary>Merges two copies of one house: the union of their changes, in their one order.</summary>
    /// <remarks>The same whichever is taken into which, in whatever order several are taken, and however often.</remarks>
    /// <returns>The merge, or why the two can't be copies of one house.</returns>
    public static Result<Merge> Of(HouseLog mine, HouseLog theirs)
    {
        if (!mine.Changes.IsEmpty && !theirs.Changes.IsEmpty && !theirs.Changes.Any(c => mine.Find(c.Id) is not null))
            return new Refusal($"{theirs.House.Name} is no copy of {mine.House.Name}: the two have no change in common. Nothing was merged.");
        if (mine.Jump is null && theirs.Jump is { } jump)
            return new Refusal($"{jump} Nothing was merged.");
        return HouseLog.Of(mine.Changes.Concat(theirs.Changes)).Then<Merge>(merged =>
        {
            var before = Keys(mine.House).ToHashSet();
            var known = Known(mine.House).ToHashSet();
            return new Merge(merged,
                [.. theirs.Changes.Where(c => mine.Find(c.Id) is null)],
                [.. Disagreement.All(merged.House).Where(d => !before.Contains((d.Item.Id, d.Fact.Field(d.Key))))],
                [.. RemovedAtWork.All(merged.House).Where(r => !known.Contains((r.Item.Id, r.Show(merged.House))))])
            {
                Namesakes = [.. Twice(merged.House).Except(Twice(mine.House), SameName.Comparer)],
            };
        });
    }

    private static IEnumerable<string> Twice(House house) => house.Windows.Select(w => $"window {w.Tag}")
        .Concat(Named(house, ItemKind.Panel, "panel")).Concat(Named(house, ItemKind.Hub, "hub")).Concat(Named(house, ItemKind.Remote, "remote"))
        .GroupBy(n => n, SameName.Comparer).Where(g => g.Count() > 1).Select(g => g.Key);

    private static IEnumerable<string> Named(House house, ItemKind kind, string word) => house.ItemsOf(kind).Select(i => $"{word} {house.NameOf(i)}");

    private static IEnumerable<(string, string)> Keys(House house) => Disagreement.All(house).Select(d => (d.Item.Id, d.Fact.Field(d.Key)));

    private static IEnumerable<(string, string)> Known(House house) => RemovedAtWork.All(house).Select(r => (r.Item.Id, r.Show(house)));
}
