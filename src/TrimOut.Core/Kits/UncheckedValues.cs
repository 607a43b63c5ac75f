using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Kits;

/// <summary>Whether something is worked out with a value of a maker's sheet that nobody checked against that sheet.</summary>
public static class UncheckedValues
{
    /// <summary>Works something out of a unit, and says with which unchecked values.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="work">What is worked out; through when it returns.</param>
    /// <returns>What was worked out, and the facts of the sheets whose values it read and nobody checked, each once.</returns>
    /// <remarks>
    /// What is read is recorded, on a view of the house in which nothing was worked out yet. Where every value was checked nothing is recorded.
    /// </remarks>
    public static (T Value, IReadOnlyList<Fact> Unchecked) Read<T>(Unit unit, Func<Unit, T> work)
    {
        var not = unit.House.State.UncheckedValues;
        if (not.Count == 0)
            return (work(unit), []);
        var view = new House(unit.House.State);
        var value = ReadRecorder.Record(() => work(view.FindUnit(unit.Id) ?? unit), out var reads);
        reads.IntersectWith(not);
        return (value, [.. FactsRead.Of(view, reads)]);
    }

    /// <summary>What is read where one of these values is read.</summary>
    internal static HashSet<long> KeysIn(ItemTable items) => ReadRecorder.Unnoted(() => items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed)
        .SelectMany(i => SheetValues.NotHeldIn(i).Select(f => ReadKey.Field(i, f.Name).Value)).ToHashSet());
}
