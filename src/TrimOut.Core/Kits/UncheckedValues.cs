using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Reads;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>Whether something is worked out with a value of a maker's sheet that nobody checked against that sheet.</summary>
public static class UncheckedValues
{
    /// <summary>The mark behind what rests on one. The space does not break, so that the mark stays with its figure.</summary>
    public const string Mark = "\u00A0?";

    /// <summary>A text with the mark behind it where it rests on such values; an empty text says nothing that could.</summary>
    public static string Marked(string text, bool isOfUnchecked) => isOfUnchecked && text.Length > 0 ? text + Mark : text;

    /// <summary>A text that was worked out of a unit, with the mark where it rests on such values.</summary>
    public static string Marked(Unit unit, Func<Unit, string> work) => Read(unit, work) is var (text, by) ? Marked(text, by.Count > 0) : "";

    /// <summary>A count of a sheet in the fewest cells: a ? behind one that nobody checked, and a ? alone for one that is not there.</summary>
    public static string Count(KitSheet? part, Fact<int> fact) => part?.Item.Get(fact) is not { } count ? "?"
        : NumberText.Plain(count) + (SheetMark.Holds(part.Item, fact) ? "" : "?");

    /// <summary>Works something out of a unit, and says with which unchecked values.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="work">What is worked out; through when it returns.</param>
    /// <returns>What was worked out, and the facts of the sheets whose values it read and nobody checked, each once.</returns>
    /// <remarks>
    /// An order size that is the one which was offered rests on what the offer rests on. What is read is recorded, on a view of the house in which nothing
    /// was worked out yet. Where every value was checked nothing is recorded.
    /// </remarks>
    public static (T Value, IReadOnlyList<Fact> Unchecked) Read<T>(Unit unit, Func<Unit, T> work) =>
        Read(unit.House, house => work(house.FindUnit(unit.Id) ?? unit));

    /// <summary>Works something out of a house, and says with which unchecked values.</summary>
    /// <param name="house">The house.</param>
    /// <param name="work">What is worked out of the house that it is given; through when it returns.</param>
    /// <returns>What was worked out, and the facts of the sheets whose values it read and nobody checked, each once.</returns>
    public static (T Value, IReadOnlyList<Fact> Unchecked) Read<T>(House house, Func<House, T> work)
    {
        var (value, fields) = ReadFields(house, work);
        return (value, [.. fields.Select(f => FactTable.Find(house.Find(f.Item)!.Kind, f.Field)!).Distinct()]);
    }

    /// <summary>Works something out of a unit, and says with which unchecked values of which parts.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="work">What is worked out; through when it returns.</param>
    /// <returns>What was worked out, and the values that it read and nobody checked, as fields of their parts, each once.</returns>
    public static (T Value, IReadOnlyList<FieldRef> Unchecked) ReadFields<T>(Unit unit, Func<Unit, T> work) =>
        ReadFields(unit.House, house => work(house.FindUnit(unit.Id) ?? unit));

    private static (T Value, IReadOnlyList<FieldRef> Unchecked) ReadFields<T>(House house, Func<House, T> work)
    {
        var not = house.State.UncheckedValues;
        if (not.Count == 0)
            return (work(house), []);
        var view = new House(house.State);
        var value = ReadRecorder.Record(() => work(view), out var reads);
        foreach (var taken in reads.Select(r => TakenFrom(view, new ReadKey(r))).OfType<HashSet<long>>().ToList())
            reads.UnionWith(taken);
        // Whoever notes what is read around this read it too.
        foreach (var read in reads)
            ReadRecorder.Note(new ReadKey(read));
        return (value, [.. reads.Where(not.Contains).Select(r => new ReadKey(r)).Select(r => (Part: view.State.Items[r.Place], Read: r))
            .Select(r => FieldRef.To(r.Part, r.Read.FactOf(r.Part.Kind)!)).Distinct()]);
    }

    /// <summary>What an order size that is read was taken from, where it is the one that the measures and the sheets give; null for anything else.</summary>
    private static HashSet<long>? TakenFrom(House house, ReadKey read)
    {
        if (read.IsLookup || read.Place >= house.State.Items.Count || house.State.Items[read.Place] is not { Kind: ItemKind.Unit } item
            || read.FactOf(ItemKind.Unit) is not { } fact || Array.Find(Offered, o => o.Size == fact) is not ({ } size, { } given))
            return null;
        var unit = new House(house.State).FindUnit(item.Id);
        var taken = ReadRecorder.Record(() => unit is null ? null : given(unit), out var reads);
        return taken is { } length && item.Get(size) == length ? reads : null;
    }

    private static readonly (Fact<Length> Size, Func<Unit, Length?> Given)[] Offered =
        [(UnitFacts.OrderWidth, u => u.WorkedOutWidth), (UnitFacts.OrderHeight, u => u.WorkedOutHeight)];

    /// <summary>The facts of unchecked values that are among what was read, each once.</summary>
    internal static IReadOnlyList<Fact> In(House house, HashSet<long> reads)
    {
        var not = house.State.UncheckedValues;
        return not.Count == 0 ? [] : [.. FactsRead.Of(house, reads.Where(not.Contains))];
    }

    /// <summary>What is read where one of these values is read.</summary>
    internal static HashSet<long> KeysIn(ItemTable items) => ReadRecorder.Unnoted(() => items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed)
        .SelectMany(i => SheetValues.NotHeldIn(i).Select(f => ReadKey.Field(i, f.Name).Value)).ToHashSet());
}
