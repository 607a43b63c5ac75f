using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>Makes a house out of changes. Never refuses: what is in the history happened.</summary>
internal static class Fold
{
    /// <summary>The house that ordered changes make, and the changes that were undone.</summary>
    public static (House House, ImmutableHashSet<ChangeId> OutOfForce) All(IReadOnlyList<Change> ordered)
    {
        var outOfForce = OutOfForce(ordered);
        var fields = new Dictionary<string, ImmutableDictionary<string, ImmutableArray<Head>>.Builder>();
        var items = ImmutableDictionary.CreateBuilder<string, Item>();
        Add(House.Empty.Job);
        foreach (var change in ordered)
        {
            if (outOfForce.Contains(change.Id))
                continue;
            foreach (var edit in change.Edits)
            {
                if (edit is Edit.Add add && !items.ContainsKey(add.Item))
                    Add(NewItem(add, items.Count));
                else if (edit is Edit.Put put && fields.TryGetValue(put.Item, out var of))
                    of[put.Field] = Heads(of.GetValueOrDefault(put.Field), items[put.Item].Kind, put, change);
            }
        }
        foreach (var (id, of) in fields)
            items[id] = items[id] with { Fields = of.ToImmutable() };
        return (new House(items.ToImmutable()), outOfForce);

        void Add(Item item)
        {
            items.Add(item.Id, item);
            fields.Add(item.Id, item.Fields.ToBuilder());
        }
    }

    /// <summary>The house after one more change that comes last and undoes nothing.</summary>
    public static House One(House house, Change change)
    {
        var items = house.Items;
        foreach (var edit in change.Edits)
        {
            if (edit is Edit.Add add && !items.ContainsKey(add.Item))
                items = items.Add(add.Item, NewItem(add, items.Count));
            else if (edit is Edit.Put put && items.TryGetValue(put.Item, out var item))
                items = items.SetItem(put.Item, item with { Fields = item.Fields.SetItem(put.Field, Heads(item.Fields.GetValueOrDefault(put.Field), item.Kind, put, change)) });
        }
        return house.After(items, change.Edits);
    }

    /// <summary>The house as a draft would leave it: its values replace those that are there.</summary>
    public static House Replacing(House house, Draft draft)
    {
        var over = draft.Edits.OfType<Edit.Put>().SelectMany(p => house.Find(p.Item)?.Fields.GetValueOrDefault(p.Field) is { IsDefault: false } heads ? heads.Select(h => h.Id) : []).ToImmutableArray();
        var edits = draft.Edits.Select(e => e is Edit.Put put ? put with { Over = over } : e).ToImmutableArray();
        return One(house, new Change(new ChangeId("preview", long.MaxValue), long.MaxValue, default, "", draft.What, edits));
    }

    private static ImmutableHashSet<ChangeId> OutOfForce(IReadOnlyList<Change> ordered)
    {
        var undone = ImmutableHashSet.CreateBuilder<ChangeId>();
        for (var at = ordered.Count - 1; at >= 0; at--)
        {
            if (undone.Contains(ordered[at].Id))
                continue;
            foreach (var undo in ordered[at].Edits.OfType<Edit.Undo>())
                undone.Add(undo.Of);
        }
        return undone.ToImmutable();
    }

    private static Item NewItem(Edit.Add add, int place) =>
        new(add.Item, add.Kind, add.Under, place, ImmutableDictionary<string, ImmutableArray<Head>>.Empty);

    private static ImmutableArray<Head> Heads(ImmutableArray<Head> before, ItemKind kind, Edit.Put put, Change change)
    {
        var value = put.Value is { } stored && FactTable.Find(kind, put.Field) is { } fact && fact.DecodeAny(stored) is { Ok: true } decoded ? decoded.Value : null;
        var head = new Head(change.Id, put.Value, value, change.By, change.SaidAt);
        return before.IsDefaultOrEmpty ? [head] : [.. before.Where(h => h.Id != change.Id && !put.Over.Contains(h.Id)), head];
    }
}
