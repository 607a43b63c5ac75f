using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>Houses as they stood earlier. Some of them are kept, so that going back and forth through a history replays few changes.</summary>
/// <remarks>One for a log and those that it grew out of: each of these is the beginning of the next. Any thread may ask.</remarks>
/// <param name="apart">How many changes lie between two houses that are kept on the way.</param>
internal sealed class PastHouses(int apart = 16)
{
    private const int KeptAtMost = 64;

    // Before the first of so many steps the changes are replayed all at once, which takes less for each of them.
    private readonly int _stretch = 32 * apart;
    private readonly Lock _lock = new();
    private readonly Dictionary<int, House> _kept = [];
    private readonly Queue<int> _oldest = [];

    // What was undone before it was there, as far as the changes were looked through.
    private readonly HashSet<ChangeId> _seen = [];
    private readonly HashSet<ChangeId> _undoneBefore = [];
    // What was added, undone or not, and whether a change came before an item that it is about, as far as the changes were looked through.
    private readonly HashSet<string> _added = [House.RootId];
    private bool _comesEarly;
    private int _lookedThrough;

    /// <summary>The houses up to the first so many changes, for another log that goes on from there.</summary>
    public PastHouses UpTo(int count)
    {
        var past = new PastHouses(apart);
        lock (_lock)
        {
            foreach (var at in _oldest.Where(k => k <= count))
                past.Keep(at, _kept[at]);
        }
        return past;
    }

    /// <summary>The house as it stood after the first so many changes.</summary>
    public House At(IReadOnlyList<Change> ordered, int count)
    {
        lock (_lock)
        {
            LookThrough(ordered, count);
            var at = _kept.Keys.Where(k => k <= count && k >= count - _stretch).DefaultIfEmpty(count / _stretch * _stretch).Max();
            var house = _kept.GetValueOrDefault(at) ?? Keep(at, Whole(ordered, at));
            while (at < count)
            {
                var next = Math.Min(count, (at / apart + 1) * apart);
                house = On(house, ordered, at, next) ?? FurtherBack(ordered, at, next) ?? Whole(ordered, next);
                at = next;
                Keep(at, house);
            }
            return house;
        }
    }

    /// <summary>What reaches back behind a house that is kept may still come after an earlier one.</summary>
    private House? FurtherBack(IReadOnlyList<Change> ordered, int at, int next) =>
        _kept.Keys.Where(k => k < at && k >= next - _stretch).DefaultIfEmpty(at).Min() is var earliest && earliest < at
            ? On(_kept[earliest], ordered, earliest, next)
            : null;

    /// <summary>
    /// Notes what an undo is about that comes after it in the agreed order, as in a history with losses or of a laptop that went back;
    /// and whether something was put to an item, or added under it, before it was added.
    /// </summary>
    private void LookThrough(IReadOnlyList<Change> ordered, int count)
    {
        for (; _lookedThrough < count; _lookedThrough++)
        {
            var change = ordered[_lookedThrough];
            _seen.Add(change.Id);
            _undoneBefore.UnionWith(change.Edits.OfType<Edit.Undo>().Select(u => u.Of).Where(of => !_seen.Contains(of)));
            foreach (var edit in change.Edits)
            {
                var about = edit switch { Edit.Put put => put.Item, Edit.Add under => under.Under, _ => House.RootId };
                _comesEarly |= !_added.Contains(about);
                if (edit is Edit.Add add)
                    _added.Add(add.Item);
            }
        }
    }

    private static House Whole(IReadOnlyList<Change> ordered, int count) => Fold.All([.. ordered.Take(count)]).House;

    private House Keep(int count, House house)
    {
        if (!_kept.ContainsKey(count))
            _oldest.Enqueue(count);
        if (_oldest.Count > KeptAtMost)
            _kept.Remove(_oldest.Dequeue());
        return _kept[count] = house;
    }

    /// <summary>
    /// A house after some more changes; null where they reach back into what was there before, or it into them, and all has to be replayed.
    /// </summary>
    private House? On(House house, IReadOnlyList<Change> ordered, int from, int to)
    {
        var more = new Change[to - from];
        for (var at = 0; at < more.Length; at++)
            more[at] = ordered[from + at];
        var ids = more.Select(c => c.Id).ToHashSet();
        if (ids.Overlaps(_undoneBefore) || more.SelectMany(c => c.Edits).OfType<Edit.Undo>().Any(u => !ids.Contains(u.Of)))
            return null;
        var undone = Fold.Undone(more);
        // What came before the items that it is about counts once their adding is undone: then they come back with it.
        if (_comesEarly && more.Any(c => undone.ContainsKey(c.Id) && c.Edits.Any(e => e is Edit.Add)))
            return null;
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

    /// <summary>
    /// Whether all that a change is about is there, or was added by it before: else it is about an item whose adding was undone, or comes before the item.
    /// </summary>
    public static bool IsAboutWhatIsThere(Change change, House house)
    {
        var added = new HashSet<string>();
        foreach (var edit in change.Edits)
        {
            if (edit is Edit.Put put && !IsThere(put.Item))
                return false;
            if (edit is Edit.Add add)
            {
                if (!IsThere(add.Under))
                    return false;
                added.Add(add.Item);
            }
        }
        return true;

        bool IsThere(string item) => added.Contains(item) || house.Find(item) is not null;
    }
}
