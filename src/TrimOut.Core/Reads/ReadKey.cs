using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Reads;

/// <summary>One thing that can be read of a house: a field of an item, the items below it, whether it is there, a list of items, who points at it.</summary>
/// <param name="Value">
/// The place of the item and what is read of it; for a lookup, which one and under which key. Keys that are texts are hashed:
/// two that fall together are read and changed together, which never lets a change go unseen.
/// </param>
internal readonly record struct ReadKey(long Value)
{
    private const int PlaceShift = 24;
    private const long Keyed = 1 << 22;
    private const long AllKeyed = 2 << 22;
    private const long Shape = 3 << 22;
    private const long Unknown = Shape | 0x1000;
    private const long LookupBit = 1L << 62;

    /// <summary>Whatever there is, all of it.</summary>
    public static ReadKey Everything { get; } = new(Shape | 0x800);

    /// <summary>The rooms in walking order.</summary>
    public static ReadKey Rooms { get; } = new(Shape | 0x801);

    /// <summary>The windows in walking order.</summary>
    public static ReadKey Windows { get; } = new(Shape | 0x802);

    /// <summary>Which items are in the house.</summary>
    public static ReadKey Present { get; } = new(Shape | 0x804);

    /// <summary>The items of which somebody said that they are removed, or are back.</summary>
    public static ReadKey Removals { get; } = new(Shape | 0x803);

    /// <summary>The place of the item that it is about; the job's for lists. Not for a lookup.</summary>
    public int Place => (int)(Value >> PlaceShift);

    /// <summary>Whether it is about a lookup rather than an item.</summary>
    public bool IsLookup => (Value & LookupBit) != 0;

    /// <summary>What sort of read it is.</summary>
    public ReadSort Sort
    {
        get
        {
            var rest = Value & ((1L << PlaceShift) - 1);
            return IsLookup ? (Value & uint.MaxValue) == 0 ? ReadSort.WholeLookup : (Value & 1) == 0 ? ReadSort.LookupNeighbor : ReadSort.LookupKey
                : (rest & Shape) != Shape ? (rest & AllKeyed) != 0 ? ReadSort.AllOfAFact : ReadSort.Field
                : (rest & ~Shape) switch
                {
                    0 => ReadSort.AllFields,
                    >= 0x2000 => ReadSort.NoSuchItem,
                    >= 0x1000 => ReadSort.Field,
                    >= 0x800 => ReadSort.ListOfItems,
                    >= 0x400 => ReadSort.ItemsOfAKind,
                    >= 0x200 => ReadSort.Presence,
                    _ => ReadSort.Children,
                };
        }
    }

    /// <summary>A field of an item.</summary>
    public static ReadKey Field(Item item, string field)
    {
        var slot = FieldSlots.Of(item.Kind).Find(field);
        return slot >= 0 ? Slot(item.Place, slot)
            : FactTable.Find(item.Kind, field) is { IsKeyed: true } fact ? At(item.Place, Keyed | (long)OrdinalOf(fact) << 12 | Hash12(field))
            : At(item.Place, Unknown | Hash12(field));
    }

    /// <summary>The field with that number of the item at that place.</summary>
    public static ReadKey Slot(int place, int slot) => At(place, slot);

    /// <summary>All values of a keyed fact of an item.</summary>
    public static ReadKey AllOf(Item item, Fact fact) => At(item.Place, AllKeyed | (long)OrdinalOf(fact));

    /// <summary>All fields of an item, whatever they are.</summary>
    public static ReadKey AllFields(Item item) => At(item.Place, Shape);

    /// <summary>The items of a kind that belong to an item.</summary>
    public static ReadKey Children(int place, ItemKind kind) => At(place, Shape | 0x100 | (long)kind);

    /// <summary>Whether an item is in the house.</summary>
    public static ReadKey Presence(int place) => At(place, Shape | 0x200);

    /// <summary>All items of a kind.</summary>
    public static ReadKey OfKind(ItemKind kind) => At(0, Shape | 0x400 | (long)kind);

    /// <summary>That there is no item of an id.</summary>
    public static ReadKey NoSuch(string id) => At(0, Shape | 0x2000 | Hash12(id));

    /// <summary>What a lookup has under a key.</summary>
    public static ReadKey Of(Lookup lookup, string key) =>
        new(LookupBit | (long)lookup.Number << 32 | unchecked((uint)key.GetHashCode(StringComparison.Ordinal)) | 1);

    /// <summary>Which key of a lookup stands before a key.</summary>
    public static ReadKey Before(Lookup lookup, string key) =>
        new(LookupBit | (long)lookup.Number << 32 | (unchecked((uint)key.GetHashCode(StringComparison.Ordinal)) & ~1u) | 2);

    /// <summary>The whole of a lookup, in its order.</summary>
    public static ReadKey All(Lookup lookup) => new(LookupBit | (long)lookup.Number << 32);

    /// <summary>The fact that it is about; null where it is about items or an unknown field.</summary>
    public Fact? FactOf(ItemKind kind)
    {
        var rest = Value & ((1L << PlaceShift) - 1);
        if (IsLookup || (rest & Shape) == Shape)
            return null;
        if ((rest & AllKeyed) != 0)
            return FactTable.Of(kind)[(int)(rest & 0x3ff)];
        if ((rest & Keyed) != 0)
            return FactTable.Of(kind)[(int)((rest >> 12) & 0x3ff)];
        var field = FieldSlots.Of(kind).Fields[(int)rest];
        return FactTable.Find(kind, field.Split('#')[0]);
    }

    private static ReadKey At(int place, long what) => new((long)place << PlaceShift | what);

    private static long Hash12(string text) => text.GetHashCode(StringComparison.Ordinal) & 0xfff;

    private static int OrdinalOf(Fact fact)
    {
        var all = FactTable.Of(fact.Subject);
        for (var at = 0; at < all.Count; at++)
        {
            if (ReferenceEquals(all[at], fact))
                return at;
        }
        throw new InvalidOperationException($"{fact.Name} is not in the table that all of them stand in.");
    }
}
