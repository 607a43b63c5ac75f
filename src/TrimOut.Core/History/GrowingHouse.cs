using System.Collections.Immutable;
using System.Runtime.InteropServices;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>A house while its history is replayed. Values that were replaced are never decoded: most of a long history is.</summary>
internal sealed class GrowingHouse
{
    private readonly Dictionary<string, TakenBack> _takenBack;
    private readonly Dictionary<string, Growing> _items;
    private readonly HashSet<string> _back = [];

    /// <summary>A house with nothing in it yet.</summary>
    /// <param name="takenBack">Items whose adding was undone.</param>
    public GrowingHouse(Dictionary<string, TakenBack> takenBack) =>
        (_takenBack, _items) = (takenBack, new() { [House.RootId] = new Growing(House.Empty.Job) });

    /// <summary>Some items of a house, to be replayed from their beginning.</summary>
    public GrowingHouse(IEnumerable<Item> items) =>
        (_takenBack, _items) = ([], items.ToDictionary(i => i.Id, i => new Growing(new Item(i.Id, i.Kind, i.Under, i.Place))));

    /// <summary>The items as they are now, by their places.</summary>
    public IEnumerable<Item> Items => _items.Values.Select(i => i.Done()).OrderBy(i => i.Place);

    /// <summary>Replays a change that is in force.</summary>
    public void Add(Change change)
    {
        foreach (var edit in change.Edits)
        {
            if (edit is Edit.Add add)
                Add(add);
            else if (edit is Edit.Put put && (Find(put.Item) ?? Back(put.Item)) is { } item)
                item.Put(put, change);
        }
    }

    /// <summary>The house.</summary>
    public House Done() => new(new ItemTable(Items));

    private Growing? Find(string id) => _items.GetValueOrDefault(id);

    private void Add(Edit.Add add)
    {
        if (Find(add.Item) is null)
        {
            if (Find(add.Under) is null)
                Back(add.Under);
            // What comes back with what it belongs to may be this very item.
            _items.TryAdd(add.Item, new Growing(new Item(add.Item, add.Kind, add.Under, _items.Count)));
        }
    }

    /// <summary>
    /// An item whose adding was undone, while somebody who did not know of that went on with it: it is in the history with all
    /// it had and counts as removed, so that nobody's work vanishes unseen.
    /// </summary>
    private Growing? Back(string id)
    {
        if (!_takenBack.TryGetValue(id, out var taken) || taken.RootOf(id) is not { } root || !_back.Add(root))
            return null;
        foreach (var edit in taken.Added.Edits)
        {
            if (edit is Edit.Add add && taken.RootOf(add.Item) == root)
                Add(add);
            else if (edit is Edit.Put put && taken.RootOf(put.Item) == root)
                Find(put.Item)?.Put(put, taken.Added);
        }
        Find(root)?.Put(new Edit.Put(root, Item.RemovedField, Seen.Of([taken.Added.Id, taken.By.Id]).ToString(), []), taken.By);
        return Find(id);
    }

    private sealed class Growing(Item item)
    {
        private readonly Dictionary<string, ImmutableArray<(Edit.Put Put, Change Change)>> _fields = [];
        private readonly Dictionary<string, Head> _kept = [];

        public void Put(Edit.Put put, Change change)
        {
            if (EarlierValues.AreKept(item.Kind, put.Field))
                _kept[put.Field] = Fold.HeadOf(item.Kind, put, change) with { Before = _kept.GetValueOrDefault(put.Field) };
            ref var puts = ref CollectionsMarshal.GetValueRefOrAddDefault(_fields, put.Field, out _);
            puts = puts.IsDefaultOrEmpty || (puts.Length == 1 && IsOver(puts[0].Change, put, change))
                ? [(put, change)]
                : [.. puts.Where(p => !IsOver(p.Change, put, change)), (put, change)];
        }

        public Item Done() => Item.Of(item,
            _fields.Select(f => KeyValuePair.Create(f.Key, ImmutableArray.CreateRange(f.Value, p => HeadOf(p.Put, p.Change)))));

        private Head HeadOf(Edit.Put put, Change change)
        {
            var kept = _kept.GetValueOrDefault(put.Field);
            while (kept is not null && (kept.Id != change.Id || kept.Stored != put.Value))
                kept = kept.Before;
            return kept ?? Fold.HeadOf(item.Kind, put, change);
        }

        private static bool IsOver(Change before, Edit.Put put, Change change) => before.Id == change.Id || put.Over.Contains(before.Id);
    }
}
