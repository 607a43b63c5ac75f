using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>An order goes out with a width and a height: asked before it is written that it went out.</summary>
public static class OrderGoesOut
{
    /// <summary>Whether a detail says of a unit that its order went out: its day, or the maker's number for it.</summary>
    public static bool IsSaidBy(Fact fact) => fact == UnitFacts.OrderedOn || fact == UnitFacts.Acknowledgement;

    /// <summary>What speaks against writing a detail now, in a sentence: a size that is blank; null where nothing does.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">What has the detail.</param>
    /// <param name="fact">The detail.</param>
    public static string? Against(House house, Item item, Fact fact) =>
        IsSaidBy(fact) && house.FindUnit(item.Id) is { BlankOfOrderSize: { Count: > 0 } blank } unit
            ? $"{unit.Tag} has no {string.Join(" and no ", blank.Select(f => f.Label.ToLowerInvariant()))} yet, and an order goes out with both."
            : null;
}
