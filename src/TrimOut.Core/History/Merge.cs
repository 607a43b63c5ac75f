using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>What taking another copy's changes into a house does.</summary>
/// <param name="Merged">The history with both.</param>
/// <param name="New">The changes that only the other copy had, in their order.</param>
/// <param name="Disagreements">Facts on which the two now disagree, and did not before.</param>
/// <param name="RemovedAndChanged">What one copy removed while the other went on with it, in words.</param>
public sealed record Merge(HouseLog Merged, ImmutableArray<Change> New, ImmutableArray<Disagreement> Disagreements, ImmutableArray<string> RemovedAndChanged)
{
    /// <summary>Merges two copies of one house: the union of their changes, in their one order.</summary>
    /// <remarks>The same whichever is taken into which, in whatever order several are taken, and however often.</remarks>
    /// <returns>The merge, or why the two can't be copies of one house.</returns>
    public static Result<Merge> Of(HouseLog mine, HouseLog theirs)
    {
        if (!mine.Changes.IsEmpty && !theirs.Changes.IsEmpty && !theirs.Changes.Any(c => mine.Find(c.Id) is not null))
            return new Refusal($"{theirs.House.Name} is no copy of {mine.House.Name}: the two have no change in common. Nothing was merged.");
        return HouseLog.Of(mine.Changes.Concat(theirs.Changes)).Then<Merge>(merged =>
        {
            var before = Keys(mine.House).Concat(Keys(theirs.House)).ToHashSet();
            return new Merge(merged,
                [.. theirs.Changes.Where(c => mine.Find(c.Id) is null)],
                [.. Disagreement.All(merged.House).Where(d => !before.Contains((d.Item.Id, d.Fact.Field(d.Key))))],
                [.. Removals(merged, mine, theirs).Concat(Removals(merged, theirs, mine)).Distinct().Order(StringComparer.Ordinal)]);
        });
    }

    private static IEnumerable<(string, string)> Keys(House house) => Disagreement.All(house).Select(d => (d.Item.Id, d.Fact.Field(d.Key)));

    /// <summary>Items that one copy removed without having seen what the other did to them or to what belongs to them.</summary>
    private static IEnumerable<string> Removals(HouseLog merged, HouseLog remover, HouseLog other)
    {
        var removed = remover.Changes.Where(c => other.Find(c.Id) is null && merged.IsInForce(c.Id))
            .SelectMany(c => c.Edits.OfType<Edit.Put>().Where(p => p.Field == Item.RemovedField && p.Value is not null).Select(p => (Change: c, p.Item)));
        foreach (var (change, id) in removed)
        {
            var touched = other.Changes.Where(c => remover.Find(c.Id) is null && merged.IsInForce(c.Id))
                .Where(c => c.Edits.Any(e => e is Edit.Put put ? Belongs(merged.House, put.Item, id) : e is Edit.Add add && Belongs(merged.House, add.Item, id))).ToList();
            if (touched.Count > 0 && merged.House.Find(id) is { Removed: true } item)
                yield return $"{merged.House.NameOf(item)} was removed by {change.By} on {change.SaidAt:yyyy-MM-dd HH:mm}, while {string.Join(", ", touched.Select(t => t.By).Distinct())} went on with it: {string.Join("; ", touched.Select(t => t.What).Take(4))}. It stays removed until somebody brings it back; nothing of it is lost.";
        }
    }

    private static bool Belongs(House house, string item, string to)
    {
        for (var at = house.Find(item); at is not null; at = house.Find(at.Under))
        {
            if (at.Id == to)
                return true;
        }
        return false;
    }
}
