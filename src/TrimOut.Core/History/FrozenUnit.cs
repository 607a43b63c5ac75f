using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>A unit whose order sheet is frozen, as it was then.</summary>
/// <remarks>
/// It was frozen by the change that put the day, and is seen in the house as whoever put it knew it: what comes later in the history, undos
/// among it, does not count, and neither does what another laptop had done before without that being known. A day that is put anew freezes anew.
/// </remarks>
/// <param name="AsFrozen">The unit, in the house as it was frozen, which shows lengths in the units of the house as it stands.</param>
/// <param name="On">The day of its sheet.</param>
/// <param name="Frozen">Who froze it, and when.</param>
public sealed record FrozenUnit(Unit AsFrozen, DateOnly On, Head Frozen)
{
    private static readonly Comparer<Change> InOrder = Comparer<Change>.Create(Change.Order);
    private static readonly Comparer<Head> Later = Comparer<Head>.Create((a, b) => a.IsAfter(b) ? 1 : b.IsAfter(a) ? -1 : 0);

    /// <summary>All of a history, removed ones too, in the order in which they were frozen.</summary>
    public static IReadOnlyList<FrozenUnit> All(HouseLog log)
    {
        var frozen = new List<FrozenUnit>();
        var freezes = log.House.Items.Values.Where(i => i.Kind == ItemKind.Unit)
            .SelectMany(i => Freeze.Of(i) is { } freeze ? [(Unit: i, Freeze: freeze)] : Array.Empty<(Item Unit, Freeze Freeze)>());
        foreach (var known in freezes.GroupBy(f => Known(f.Freeze)))
        {
            List<Change> changes = [.. log.Changes.Where(c => known.First().Freeze.Knew(c.Id))];
            var past = new PastHouses();
            foreach (var (unit, freeze) in known.OrderBy(f => f.Freeze.Put, Later))
            {
                var house = past.At(changes, 1 + changes.BinarySearch(log.Find(freeze.Put.Id)!, InOrder));
                if (InUnitsOf(log.House, house).UnitAlone(unit.Id) is { } asFrozen)
                    frozen.Add(new FrozenUnit(asFrozen, freeze.On, freeze.Put));
            }
        }
        return [.. frozen.OrderBy(f => f.Frozen, Later).ThenBy(f => f.AsFrozen.Item.Place)];
    }

    /// <summary>What is shown beside the house as it stands is shown in its units, whatever they were then.</summary>
    private static House InUnitsOf(House now, House then) => now.DisplayUnits == then.DisplayUnits ? then
        : HouseLog.Preview(then, new Draft("The units of today").Put(House.RootId, HouseFacts.Units, now.DisplayUnits));

    /// <summary>What somebody knew of the other laptops: the same for all that was frozen between two merges.</summary>
    private static string Known(Freeze freeze) =>
        freeze.Seen is null ? "" : $"{freeze.Put.Id.Device} {freeze.Seen.Without(freeze.Put.Id.Device)}";
}
