using System.Collections.Frozen;
using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>Makes a house out of changes. Never refuses: what is in the history happened.</summary>
internal static class Fold
{
    /// <summary>The house that ordered changes make, and the changes that were undone, each with the change that undid it.</summary>
    public static (House House, FrozenDictionary<ChangeId, ChangeId> Undone) All(IReadOnlyList<Change> ordered)
    {
        var undone = Undone(ordered);
        var growing = new GrowingHouse(undone.Count == 0 ? [] : TakenBack.All(ordered, undone));
        foreach (var change in ordered)
        {
            if (!undone.ContainsKey(change.Id))
                growing.Add(change);
        }
        return (growing.Done(), undone.ToFrozenDictionary(u => u.Key, u => u.Value.Id));
    }

    /// <summary>The house after one more change that comes last, undoes nothing and is about items that are there.</summary>
    public static House One(House house, Change change)
    {
        var items = house.Items.Edit();
        foreach (var edit in change.Edits)
        {
            if (edit is Edit.Add add && items.Find(add.Item) is null)
                items.Set(new Item(add.Item, add.Kind, add.Under, items.Count));
            else if (edit is Edit.Put put && items.Find(put.Item) is { } item)
                items.Set(item.With(put.Field, Heads(item.HeadsToFold(put.Field), item.Kind, put, change)));
        }
        return house.After(items.Done(), change.Edits);
    }

    /// <summary>The house as a draft would leave it: its values replace those that are there.</summary>
    public static House Replacing(House house, Draft draft, DateTimeOffset saidAt)
    {
        var over = draft.Edits.OfType<Edit.Put>().SelectMany(p => house.Find(p.Item)?.Heads(p.Field).Select(h => h.Id) ?? []).ToImmutableArray();
        var edits = draft.Edits.Select(e => e is Edit.Put put ? put with { Over = over } : e).ToImmutableArray();
        return One(house, new Change(new ChangeId("preview", long.MaxValue), long.MaxValue, saidAt, "", draft.What, edits));
    }

    /// <summary>A value as it stands in a field.</summary>
    public static Head HeadOf(ItemKind kind, Edit.Put put, Change change) =>
        new(change.Id, put.Value, ValueOf(FactTable.Find(kind, put.Field), put.Value), change.By, change.SaidAt) { Stamp = change.Stamp };

    /// <summary>A stored value, decoded; null where there is none, or none that the fact can hold.</summary>
    public static object? ValueOf(Fact? fact, string? stored) => stored is not null && fact?.DecodeAny(stored) is { Ok: true } decoded ? decoded.Value : null;

    /// <summary>The changes that were undone, each with the change that undid it.</summary>
    public static Dictionary<ChangeId, Change> Undone(IReadOnlyList<Change> ordered)
    {
        var undone = new Dictionary<ChangeId, Change>();
        for (var at = ordered.Count - 1; at >= 0; at--)
        {
            var change = ordered[at];
            if (undone.ContainsKey(change.Id))
                continue;
            foreach (var edit in change.Edits)
            {
                if (edit is Edit.Undo undo)
                    undone.TryAdd(undo.Of, change);
            }
        }
        return undone;
    }

    private static ImmutableArray<Head> Heads(ImmutableArray<Head> before, ItemKind kind, Edit.Put put, Change change)
    {
        var head = HeadOf(kind, put, change);
        if (before.IsDefaultOrEmpty)
            return [head];
        if (EarlierValues.AreKept(kind, put.Field))
            head = head with { Before = before[^1] };
        return [.. before.Where(h => h.Id != change.Id && !put.Over.Contains(h.Id)), head];
    }
}
