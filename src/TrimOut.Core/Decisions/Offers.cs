using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>Values that can be worked out or read off other facts, offered when a fact is asked for; nothing is put without the user.</summary>
public static class Offers
{
    /// <summary>The text to start with for a fact of a subject; null when nothing can be offered.</summary>
    public static string? For(Subject subject, Fact fact) => subject is not Unit unit ? null
        : fact == RunFacts.LabelAtPanel ? unit.Run?.Item.Get(RunFacts.LabelAtWindow) ?? unit.Tag
        : fact == RunFacts.LabelAtWindow ? unit.Tag
        : fact == UnitFacts.EntrySide ? Shown(unit, UnitFacts.LeadSide)
        : fact == UnitFacts.BoxLabel ? unit.Tag
        : fact == UnitFacts.HubName ? $"{unit.Window.Room?.Name} {unit.Tag}".Trim()
        : fact == UnitFacts.Hub ? OnlyOne(unit.House, ItemKind.Hub)
        : fact == RunFacts.Panel ? OnlyOne(unit.House, ItemKind.Panel)
        : fact == RunFacts.Output ? FirstFree(unit.Run?.Panel)
        : fact == UnitFacts.OrderWidth ? unit.WorkedOutWidth?.Show(unit.House.DisplayUnits)
        : fact == UnitFacts.OrderHeight ? unit.WorkedOutHeight?.Show(unit.House.DisplayUnits)
        : null;

    /// <summary>
    /// What neighbors often have alike. A reading, and what somebody has to look at on each cable, is never offered from another one.
    /// </summary>
    private static readonly HashSet<Fact> OftenAlike =
    [
        WindowFacts.Facing, WindowFacts.Reach, WindowFacts.Mount,
        UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Power, UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity, UnitFacts.HeadCover,
        RunFacts.Cable, RunFacts.HoleTo, RunFacts.HoleDrill, RunFacts.SpareEnds,
        LegFacts.Direction, LegFacts.Place, LegFacts.AirMoves, LegFacts.Conduit,
    ];

    /// <summary>The value of the nearest unit before on the walk that has one; for a leg, that of the leg in the same place of its run.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">The window, unit, run or leg.</param>
    /// <param name="fact">The detail.</param>
    /// <returns>The stored value and the tag of its unit; null where there is none, or where it has to be looked at each time.</returns>
    public static (string Stored, string Of)? AsBefore(House house, Item item, Fact fact)
    {
        if (!OftenAlike.Contains(fact) || UnitOf(house, item) is not { } unit)
            return null;
        var place = item.Kind == ItemKind.Leg ? unit.Run!.Legs.ToList().FindIndex(l => l.Id == item.Id) : 0;
        for (var at = house.Units.IndexOf(unit) - 1; at >= 0; at--)
        {
            if (Like(house.Units[at], item.Kind, place)?.Latest(fact.Name)?.Stored is { } stored)
                return (stored, house.Units[at].Tag);
        }
        return null;
    }

    private static Unit? UnitOf(House house, Item item) => item.Kind switch
    {
        ItemKind.Unit => house.FindUnit(item.Id),
        ItemKind.Window => house.FindWindow(item.Id)?.Units.FirstOrDefault(),
        ItemKind.Run or ItemKind.Leg when house.Find(item.Under) is { } above => UnitOf(house, above),
        _ => null,
    };

    private static Item? Like(Unit unit, ItemKind kind, int place) => kind switch
    {
        ItemKind.Window => unit.Window.Item,
        ItemKind.Unit => unit.Item,
        ItemKind.Run => unit.Run?.Item,
        _ => unit.Run is { } run && place < run.Legs.Length ? run.Legs[place].Item : null,
    };

    private static string? Shown(Unit unit, Fact fact) => unit.Show(fact) is { Length: > 0 } shown ? shown : null;

    private static string? FirstFree(Panel? panel) => panel?.Type?.Outputs is not { } outputs ? null
        : Enumerable.Range(1, outputs).Where(o => panel.RunAt(o) is null).Select(o => NumberText.Plain(o)).FirstOrDefault();

    private static string? OnlyOne(House house, ItemKind kind) =>
        house.ItemsOf(kind).Take(2).ToList() is [var one] ? house.NameOf(one) : null;
}
