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

    private static string? Shown(Unit unit, Fact fact) => unit.Show(fact) is { Length: > 0 } shown ? shown : null;

    private static string? FirstFree(Panel? panel) => panel?.Type?.Outputs is not { } outputs ? null
        : Enumerable.Range(1, outputs).Where(o => panel.RunAt(o) is null).Select(o => NumberText.Plain(o)).FirstOrDefault();

    private static string? OnlyOne(House house, ItemKind kind) =>
        house.ItemsOf(kind).Take(2).ToList() is [var one] ? house.NameOf(one) : null;
}
