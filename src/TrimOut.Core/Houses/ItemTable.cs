using System.Collections.Immutable;

namespace TrimOut.Core.Houses;

/// <summary>
/// All items of a house, removed ones too, by their place and their id. Never changes: another item makes another table that shares nearly
/// everything.
/// </summary>
/// <remarks>
/// Items are only ever added behind the last one or put in the place of an earlier state of themselves, so a place is a steady name for an item.
/// </remarks>
public sealed class ItemTable
{
    private const int Shift = 6;
    private const int Row = 1 << Shift;

    private const int Hints = 1024;
    private const int HintLetters = 6;

    // Where an id was found the last time, in whatever table: only a guess.
    [ThreadStatic]
    private static int[]? _hints;

    private readonly Item[][] _rows;
    private readonly Dictionary<string, int> _first;
    private readonly ImmutableDictionary<string, int> _since;

    private ItemTable(Item[][] rows, int count, Dictionary<string, int> first, ImmutableDictionary<string, int> since)
    {
        (_rows, Count, _first, _since) = (rows, count, first, since);
    }

    /// <summary>A table of items, each at its place: 0, 1, 2 and so on.</summary>
    /// <exception cref="ArgumentException">An item is not at its place, or an id is there twice.</exception>
    public ItemTable(IEnumerable<Item> items)
    {
        _rows = [.. items.Chunk(Row).Select(row => row.Length == Row ? row : [.. row, .. new Item[Row - row.Length]])];
        _first = [];
        _since = ImmutableDictionary<string, int>.Empty;
        foreach (var item in _rows.SelectMany(r => r).TakeWhile(i => i is not null))
        {
            if (item.Place != Count++)
                throw new ArgumentException($"{item.Id} is at {Count - 1} and says {item.Place}.", nameof(items));
            _first.Add(item.Id, item.Place);
        }
    }

    /// <summary>How many there are.</summary>
    public int Count { get; }

    /// <summary>All items in the order in which they were added.</summary>
    public IEnumerable<Item> Values
    {
        get
        {
            for (var place = 0; place < Count; place++)
                yield return this[place];
        }
    }

    /// <summary>The item at a place.</summary>
    public Item this[int place] => _rows[place >> Shift][place & (Row - 1)];

    /// <summary>The item with an id.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public Item this[string id] => Find(id) ?? throw new KeyNotFoundException($"There is no item {id}.");

    /// <summary>The item with an id; null when there is none.</summary>
    public Item? Find(string id)
    {
        ref var hint = ref HintFor(id);
        if (hint < Count && this[hint] is var hinted && hinted.Id == id)
            return hinted;
        if (!_first.TryGetValue(id, out var place) && (_since.Count == 0 || !_since.TryGetValue(id, out place)))
            return null;
        hint = place;
        return this[place];
    }

    // Whoever works through a house asks for the same few items many times in a row; in a large house each look into the dictionary leaves the cache.
    private static ref int HintFor(string id)
    {
        var hash = id.Length;
        for (var at = Math.Max(0, id.Length - HintLetters); at < id.Length; at++)
            hash = (hash << 5) ^ (hash >> 7) ^ id[at];
        return ref (_hints ??= new int[Hints])[hash & (Hints - 1)];
    }

    /// <summary>A table to be changed and then kept.</summary>
    internal Editor Edit() => new(this);

    /// <summary>Each item of this table that is another object than at the same place of an earlier one, with what it was; null where there was none.</summary>
    internal IEnumerable<(Item? Before, Item After)> OtherThanIn(ItemTable before)
    {
        for (var row = 0; row < _rows.Length; row++)
        {
            var (now, then) = (_rows[row], row < before._rows.Length ? before._rows[row] : null);
            if (ReferenceEquals(now, then))
                continue;
            for (var at = 0; at < Row && (row << Shift) + at < Count; at++)
            {
                var was = (row << Shift) + at < before.Count ? then![at] : null;
                if (!ReferenceEquals(now[at], was))
                    yield return (was, now[at]);
            }
        }
    }

    /// <summary>Puts items in or behind the others; nothing of the table that it came from changes.</summary>
    internal sealed class Editor(ItemTable from)
    {
        private readonly HashSet<int> _own = [];
        private Item[][] _rows = (Item[][])from._rows.Clone();
        private int _count = from.Count;
        private ImmutableDictionary<string, int> _since = from._since;

        /// <summary>How many there are.</summary>
        public int Count => _count;

        /// <summary>The item with an id; null when there is none.</summary>
        public Item? Find(string id) =>
            from._first.TryGetValue(id, out var place) || _since.TryGetValue(id, out place) ? _rows[place >> Shift][place & (Row - 1)] : null;

        /// <summary>Puts an item at its place, which is that of its earlier state or the one behind the last.</summary>
        public void Set(Item item)
        {
            if (item.Place == _count)
            {
                _since = _since.Add(item.Id, item.Place);
                if (_count++ >> Shift == _rows.Length)
                    Array.Resize(ref _rows, _rows.Length + 1);
            }
            var row = item.Place >> Shift;
            if (_own.Add(row))
                _rows[row] = _rows[row] is { } shared ? (Item[])shared.Clone() : new Item[Row];
            _rows[row][item.Place & (Row - 1)] = item;
        }

        /// <summary>The table as it is now.</summary>
        public ItemTable Done() => new(_rows, _count, from._first, _since);
    }
}
