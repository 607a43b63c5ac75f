using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>Houses as they stood earlier, a few of them kept, so that going back and forth through a history replays few changes.</summary>
/// <remarks>One for all logs that begin with the same changes. Any thread may ask.</remarks>
/// <param name="few">How many changes are put on a kept house one by one: about as long as looking at the house that comes of it takes.</param>
internal sealed class PastHouses(int few = 512)
{
    private const int KeptAtMost = 8;

    private readonly Lock _lock = new();
    private readonly List<(int Count, House House)> _kept = [];

    /// <summary>The house as it stood after the first so many changes.</summary>
    public House At(IReadOnlyList<Change> ordered, int count)
    {
        lock (_lock)
        {
            var near = _kept.Where(k => k.Count <= count && k.Count >= count - few).OrderByDescending(k => k.Count).FirstOrDefault();
            var house = near.House is null ? null : On(near.House, ordered, near.Count, count);
            if (house is null)
            {
                var from = count / few * few;
                house = On(Whole(ordered, from), ordered, from, count) ?? Whole(ordered, count);
            }
            return Keep(count, house);
        }
    }

    private House Whole(IReadOnlyList<Change> ordered, int count) =>
        _kept.Find(k => k.Count == count).House ?? Keep(count, Fold.All([.. ordered.Take(count)]).House);

    private House Keep(int count, House house)
    {
        _kept.RemoveAll(k => k.Count == count);
        if (_kept.Count == KeptAtMost)
            _kept.RemoveAt(0);
        _kept.Add((count, house));
        return house;
    }

    /// <summary>A house after some more changes; null where they reach back into what was there before, and all has to be replayed.</summary>
    private static House? On(House house, IReadOnlyList<Change> ordered, int from, int to)
    {
        var more = new Change[to - from];
        for (var at = 0; at < more.Length; at++)
            more[at] = ordered[from + at];
        var ids = more.Select(c => c.Id).ToHashSet();
        if (more.SelectMany(c => c.Edits).OfType<Edit.Undo>().Any(u => !ids.Contains(u.Of)))
            return null;
        var undone = Fold.Undone(more);
        foreach (var change in more)
        {
            if (undone.ContainsKey(change.Id))
                continue;
            if (!IsAboutWhatIsThere(change, house))
                return null;
            house = Fold.One(house, change);
        }
        return house;
    }

    /// <summary>Whether all that a change is about is there or added by it: else it is about an item whose adding was undone.</summary>
    public static bool IsAboutWhatIsThere(Change change, House house)
    {
        var added = change.Edits.OfType<Edit.Add>().Select(a => a.Item).ToHashSet();
        return change.Edits.All(e => e switch
        {
            Edit.Put put => added.Contains(put.Item) || house.Find(put.Item) is not null,
            Edit.Add add => added.Contains(add.Under) || house.Find(add.Under) is not null,
            _ => true,
        });
    }
}
