using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Houses;

/// <summary>One thing in the house and its facts, as the history left them. Never changes: another value makes another item.</summary>
public sealed class Item
{
    /// <summary>The field that takes an item out of the house without losing it.</summary>
    public const string RemovedField = "removed";

    private static readonly ImmutableSortedDictionary<string, Head[]> NoOthers = ImmutableSortedDictionary.Create<string, Head[]>(StringComparer.Ordinal);

    // A field has one value, or more where two devices disagree; nearly all have one, which then stands there by itself.
    private readonly object?[] _slots;
    private readonly ImmutableSortedDictionary<string, Head[]> _others;

    /// <summary>An item with no facts yet.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="under">The id of the item it belongs to; empty for the house itself.</param>
    /// <param name="place">Its place in the order in which items were added.</param>
    public Item(string id, ItemKind kind, string under, int place)
        : this(id, kind, under, place, new object?[FieldSlots.Of(kind).Fields.Length], NoOthers) { }

    private Item(string id, ItemKind kind, string under, int place, object?[] slots, ImmutableSortedDictionary<string, Head[]> others)
    {
        (Id, Kind, Under, Place) = (id, kind, under, place);
        (_slots, _others) = (slots, others);
    }

    /// <summary>Its id.</summary>
    public string Id { get; }

    /// <summary>What it is.</summary>
    public ItemKind Kind { get; }

    /// <summary>The id of the item it belongs to; empty for the house itself.</summary>
    public string Under { get; }

    /// <summary>Its place in the order in which items were added.</summary>
    public int Place { get; }

    /// <summary>Whether it was taken out of the house.</summary>
    public bool Removed => Latest(RemovedField)?.Stored is not null;

    /// <summary>All fields that ever had a value, with the values in force: one, or more when two devices disagree (the last is shown).</summary>
    public IEnumerable<KeyValuePair<string, ImmutableArray<Head>>> Fields
    {
        get
        {
            ReadRecorder.Note(ReadKey.AllFields(this));
            return AllFields();
        }
    }

    /// <summary>The value that is shown for a field, or null.</summary>
    public Head? Latest(string field)
    {
        var slot = FieldSlots.Of(Kind).Find(field);
        if (slot >= 0)
            return At(slot);
        if (ReadRecorder.IsOn)
            ReadRecorder.Note(ReadKey.Field(this, field));
        return _others.TryGetValue(field, out var heads) ? heads[^1] : null;
    }

    /// <summary>The same, and whether two devices disagree about it.</summary>
    internal Head? Latest(string field, out bool several)
    {
        var slot = FieldSlots.Of(Kind).Find(field);
        if (slot >= 0)
        {
            several = _slots[slot] is Head[];
            return At(slot);
        }
        if (ReadRecorder.IsOn)
            ReadRecorder.Note(ReadKey.Field(this, field));
        var heads = _others.GetValueOrDefault(field);
        several = heads is { Length: > 1 };
        return heads?[^1];
    }

    /// <summary>The value that is shown for a fact, or null.</summary>
    public Head? Latest(Fact fact) => fact.Subject == Kind && !fact.IsKeyed ? At(fact.Slot) : Latest(fact.Name);

    /// <summary>The values in force of a field; empty when it never had one.</summary>
    public ImmutableArray<Head> Heads(string field)
    {
        if (ReadRecorder.IsOn)
            ReadRecorder.Note(ReadKey.Field(this, field));
        return HeadsToFold(field);
    }

    /// <summary>The values in force of a field, to put another one over them: that is no reading of the house.</summary>
    internal ImmutableArray<Head> HeadsToFold(string field) => FieldSlots.Of(Kind).Find(field) is >= 0 and var slot ? Several(_slots[slot])
        : _others.TryGetValue(field, out var heads) ? [.. heads] : [];

    /// <summary>The value that is shown for the field with that number.</summary>
    internal Head? At(int slot)
    {
        ReadRecorder.Note(ReadKey.Slot(Place, slot));
        return _slots[slot] switch { Head one => one, Head[] several => several[^1], _ => null };
    }

    /// <summary>The shown values of a keyed fact, by field, in the order of the fields.</summary>
    internal IEnumerable<(string Field, Head Head)> AllOf(Fact fact)
    {
        if (ReadRecorder.IsOn)
            ReadRecorder.Note(ReadKey.AllOf(this, fact));
        var prefix = fact.Field("");
        return AllFields().Where(f => f.Key.StartsWith(prefix, StringComparison.Ordinal)).OrderBy(f => f.Key, StringComparer.Ordinal)
            .Select(f => (f.Key, f.Value[^1]));
    }

    /// <summary>This item with other values of a field.</summary>
    internal Item With(string field, ImmutableArray<Head> heads)
    {
        var slot = FieldSlots.Of(Kind).Find(field);
        if (slot < 0)
            return new Item(Id, Kind, Under, Place, _slots, _others.SetItem(field, [.. heads]));
        var slots = (object?[])_slots.Clone();
        slots[slot] = heads is [var one] ? one : heads.ToArray();
        return new Item(Id, Kind, Under, Place, slots, _others);
    }

    /// <summary>An item with these values, made at once.</summary>
    internal static Item Of(Item empty, IEnumerable<KeyValuePair<string, ImmutableArray<Head>>> fields)
    {
        var slots = new object?[empty._slots.Length];
        ImmutableSortedDictionary<string, Head[]>.Builder? others = null;
        foreach (var (field, heads) in fields)
        {
            if (FieldSlots.Of(empty.Kind).Find(field) is >= 0 and var slot)
                slots[slot] = heads is [var one] ? one : heads.ToArray();
            else
                (others ??= NoOthers.ToBuilder()).Add(field, [.. heads]);
        }
        return new Item(empty.Id, empty.Kind, empty.Under, empty.Place, slots, others?.ToImmutable() ?? NoOthers);
    }

    /// <summary>The fields that have other values in another state of the same item.</summary>
    internal IEnumerable<string> FieldsOtherThanIn(Item other)
    {
        for (var slot = 0; slot < _slots.Length; slot++)
        {
            if (!ReferenceEquals(_slots[slot], other._slots[slot]) && !Several(_slots[slot]).SequenceEqual(Several(other._slots[slot])))
                yield return FieldSlots.Of(Kind).Fields[slot];
        }
        if (ReferenceEquals(_others, other._others))
            yield break;
        foreach (var field in _others.Keys.Union(other._others.Keys))
        {
            if (!(_others.GetValueOrDefault(field) ?? []).AsSpan().SequenceEqual(other._others.GetValueOrDefault(field) ?? []))
                yield return field;
        }
    }

    private IEnumerable<KeyValuePair<string, ImmutableArray<Head>>> AllFields()
    {
        var known = FieldSlots.Of(Kind).Fields;
        for (var slot = 0; slot < _slots.Length; slot++)
        {
            if (_slots[slot] is not null)
                yield return new(known[slot], Several(_slots[slot]));
        }
        foreach (var (field, heads) in _others)
            yield return new(field, [.. heads]);
    }

    private static ImmutableArray<Head> Several(object? slot) => slot switch { Head one => [one], Head[] several => [.. several], _ => [] };
}
