using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;

namespace TrimOut.Core.Houses;

/// <summary>Which items are in a house, whose they are and in what order: shared by houses that differ only in other values.</summary>
internal sealed class HouseShape
{
    private readonly ILookup<ItemKind, string> _byKind;
    private readonly ILookup<(string Under, ItemKind Kind), string> _children;

    private readonly HashSet<string> _present;

    private HouseShape(IReadOnlyList<Item> present, HashSet<string> ids, ImmutableDictionary<string, Item> items)
    {
        _present = ids;
        Present = [.. present.Select(i => i.Id)];
        _byKind = present.ToLookup(i => i.Kind, i => i.Id);
        _children = present.Where(i => i.Kind is ItemKind.Unit or ItemKind.Run or ItemKind.Leg or ItemKind.Preset or ItemKind.Punch or ItemKind.Waiver)
            .ToLookup(i => (i.Under, i.Kind), i => i.Id);
        Rooms = [.. OfKind(ItemKind.Room).OrderBy(id => items[id].Get(RoomFacts.WalkingOrder) ?? int.MaxValue)];
        var place = Rooms.Select((id, at) => (id, at)).ToDictionary(p => p.id, p => p.at);
        Windows = [.. OfKind(ItemKind.Window).OrderBy(id => items[id].Get(WindowFacts.Room) is { } room && place.TryGetValue(room.Id, out var at) ? at : int.MaxValue)];
    }

    /// <summary>All items that are in the house, as they were added.</summary>
    public ImmutableArray<string> Present { get; }

    /// <summary>Rooms, in walking order.</summary>
    public ImmutableArray<string> Rooms { get; }

    /// <summary>Windows in walking order: by room, then as they were added.</summary>
    public ImmutableArray<string> Windows { get; }

    /// <summary>The shape of a house with these items.</summary>
    public static HouseShape Of(ImmutableDictionary<string, Item> items)
    {
        var present = new HashSet<string>(items.Count);
        var ordered = new List<Item>(items.Count);
        foreach (var item in items.Values.OrderBy(i => i.Place))
        {
            // Whatever an item belongs to was added before it, except in a history that was put together from two laptops.
            if (!item.Removed && (item.Under.Length == 0 || present.Contains(item.Under) || IsPresent(items, item.Under)))
            {
                present.Add(item.Id);
                ordered.Add(item);
            }
        }
        return new HouseShape(ordered, present, items);
    }

    /// <summary>Whether an edit gives a house another shape.</summary>
    public static bool IsChangedBy(Edit edit, ImmutableDictionary<string, Item> items) => edit switch
    {
        Edit.Add => true,
        Edit.Put { Field: Item.RemovedField } => true,
        Edit.Put put when items.TryGetValue(put.Item, out var item) =>
            (item.Kind == ItemKind.Window && put.Field == WindowFacts.Room.Name) || (item.Kind == ItemKind.Room && put.Field == RoomFacts.WalkingOrder.Name),
        _ => false,
    };

    /// <summary>Whether an item is in the house.</summary>
    public bool Contains(string id) => _present.Contains(id);

    /// <summary>Items of one kind, as they were added.</summary>
    public IEnumerable<string> OfKind(ItemKind kind) => _byKind[kind];

    /// <summary>Units, runs, legs, presets, punch items and waivers that belong to an item, as they were added.</summary>
    public IEnumerable<string> Under(string id, ItemKind kind) => _children[(id, kind)];

    private static bool IsPresent(ImmutableDictionary<string, Item> items, string id)
    {
        // Nothing lies deeper than a leg of a run of a unit of a window, but a history that no program wrote may go round in circles.
        for (var depth = 0; depth < 16; depth++)
        {
            if (!items.TryGetValue(id, out var item) || item.Removed)
                return false;
            if (item.Under.Length == 0)
                return true;
            id = item.Under;
        }
        return false;
    }
}
