using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Houses;

/// <summary>Which items are in a house, whose they are and in what order, by their places: shared by houses that differ only in other values.</summary>
internal sealed class HouseShape
{
    private readonly bool[] _present;
    private readonly int[][] _byKind;
    private readonly int[]?[] _children;

    private HouseShape(ItemTable items)
    {
        _present = new bool[items.Count];
        _children = new int[]?[items.Count];
        var byKind = new List<int>[Enum.GetValues<ItemKind>().Length];
        var children = new List<int>?[items.Count];
        var removals = ImmutableArray.CreateBuilder<int>();
        for (var place = 0; place < items.Count; place++)
        {
            var item = items[place];
            var removed = item.Latest(Item.RemovedField);
            if (removed is not null)
                removals.Add(place);
            var above = item.Under.Length == 0 ? null : items.Find(item.Under);
            // Whatever an item belongs to was added before it, except in a history that was put together from two laptops.
            if (removed?.Stored is not null || !(item.Under.Length == 0 || (above is not null && (_present[above.Place] || IsPresent(items, item.Under)))))
                continue;
            _present[place] = true;
            (byKind[(int)item.Kind] ??= []).Add(place);
            if (above is not null && item.Kind is ItemKind.Unit or ItemKind.Run or ItemKind.Leg or ItemKind.Preset or ItemKind.Punch or ItemKind.Waiver
                or ItemKind.Service)
                (children[above!.Place] ??= []).Add(place);
        }
        _byKind = [.. byKind.Select(k => k?.ToArray() ?? [])];
        _children = [.. children.Select(c => c?.ToArray())];
        Removals = removals.DrainToImmutable();
        Rooms = [.. OfKind(ItemKind.Room).OrderBy(p => items[p].Get(RoomFacts.WalkingOrder) ?? int.MaxValue)];
        var order = Rooms.Select((p, at) => (items[p].Id, at)).ToDictionary(p => p.Id, p => p.at);
        Windows = [.. OfKind(ItemKind.Window).OrderBy(p => items[p].Get(WindowFacts.Room) is { } room && order.TryGetValue(room.Id, out var at) ? at
            : int.MaxValue).ThenBy(p => items[p].Get(WindowFacts.PlaceInRoom) ?? int.MaxValue)];
    }

    /// <summary>Rooms, in walking order.</summary>
    public ImmutableArray<int> Rooms { get; }

    /// <summary>Windows in walking order: by room, then by their place in it, then as they were added.</summary>
    public ImmutableArray<int> Windows { get; }

    /// <summary>Items of which somebody said that they are removed, or are back.</summary>
    public ImmutableArray<int> Removals { get; }

    /// <summary>The shape of a house with these items.</summary>
    public static HouseShape Of(ItemTable items) => ReadRecorder.Unnoted(() => new HouseShape(items));

    /// <summary>Whether an edit gives a house another shape.</summary>
    public static bool IsChangedBy(Edit edit, ItemTable items) => edit switch
    {
        Edit.Add => true,
        Edit.Put { Field: Item.RemovedField } => true,
        Edit.Put put when items.Find(put.Item) is { } item =>
            (item.Kind == ItemKind.Window && (put.Field == WindowFacts.Room.Name || put.Field == WindowFacts.PlaceInRoom.Name))
            || (item.Kind == ItemKind.Room && put.Field == RoomFacts.WalkingOrder.Name),
        _ => false,
    };

    /// <summary>Whether the item at a place is in the house.</summary>
    public bool Contains(int place) => place < _present.Length && _present[place];

    /// <summary>All items that are in the house, as they were added.</summary>
    public IEnumerable<int> Present => Enumerable.Range(0, _present.Length).Where(p => _present[p]);

    /// <summary>Items of one kind, as they were added.</summary>
    public IReadOnlyList<int> OfKind(ItemKind kind) => _byKind[(int)kind];

    /// <summary>Units, runs, legs, presets, punch items, waivers and services that belong to an item, as they were added.</summary>
    public ReadOnlySpan<int> Under(int place) => place < _children.Length ? _children[place] : null;

    /// <summary>What reads otherwise in this shape than in an earlier one of the same house.</summary>
    public void AddOtherThanIn(HouseShape before, ItemTable items, ItemTable itemsBefore, HashSet<long> changed)
    {
        for (var place = 0; place < Math.Max(_present.Length, before._present.Length); place++)
        {
            if (Contains(place) == before.Contains(place))
                continue;
            var item = place < items.Count ? items[place] : itemsBefore[place];
            changed.Add(ReadKey.Present.Value);
            changed.Add(ReadKey.Presence(place).Value);
            changed.Add(ReadKey.OfKind(item.Kind).Value);
            if ((items.Find(item.Under) ?? itemsBefore.Find(item.Under)) is { } above)
                changed.Add(ReadKey.Children(above.Place, item.Kind).Value);
        }
        if (!Rooms.AsSpan().SequenceEqual(before.Rooms.AsSpan()))
            changed.Add(ReadKey.Rooms.Value);
        if (!Windows.AsSpan().SequenceEqual(before.Windows.AsSpan()))
            changed.Add(ReadKey.Windows.Value);
        if (!Removals.AsSpan().SequenceEqual(before.Removals.AsSpan()))
            changed.Add(ReadKey.Removals.Value);
    }

    private static bool IsPresent(ItemTable items, string id)
    {
        // Nothing lies deeper than a leg of a run of a unit of a window, but a history that no program wrote may go round in circles.
        for (var depth = 0; depth < 16; depth++)
        {
            if (items.Find(id) is not { Removed: false } item)
                return false;
            if (item.Under.Length == 0)
                return true;
            id = item.Under;
        }
        return false;
    }
}
