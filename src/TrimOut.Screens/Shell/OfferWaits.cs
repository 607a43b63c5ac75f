using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Screens.Shell;

/// <summary>Why a size that is worked out elsewhere can't be offered yet: whoever finds the line empty looks for the reason.</summary>
internal static class OfferWaits
{
    /// <summary>What the offer of a detail waits for, in a sentence; null where something is offered, or nothing ever is.</summary>
    public static string? For(Unit unit, Fact fact) => fact == UnitFacts.OrderWidth && unit.WorkedOutWidth is null ? Waits(unit, Width(unit))
        : fact == UnitFacts.OrderHeight && unit.WorkedOutHeight is null ? Waits(unit, Height(unit))
        : null;

    private static string? Waits(Unit unit, Fact? fact) => fact is null ? null
        : FactTable.IsKit(fact.Subject) ? $"Nothing is offered: {fact.Label} of {unit.Kind!.Name} is not in the kit (9)."
        : $"Nothing is offered: {fact.Label} of {(fact.Subject == ItemKind.Window ? unit.Window.Tag : unit.Tag)} is not there yet.";

    private static Fact? Width(Unit unit) => Kit(unit)
        ?? (unit.Window.Units.Length > 1 ? UnitFacts.PartWidth
        : unit.Window.Mount is not { } mount ? WindowFacts.Mount
        : Missing(unit.Window, WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom)
            ?? (mount == Mount.Inside ? unit.WidthUnsaid : WindowFacts.OverlapEachSide));

    private static Fact? Height(Unit unit) => Kit(unit)
        ?? (unit.Window.Mount is not { } mount ? WindowFacts.Mount
        : Missing(unit.Window, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight)
            ?? (mount == Mount.Outside ? WindowFacts.HeadAbove : null));

    private static Fact? Kit(Unit unit) => unit.Kind is not { } kind ? UnitFacts.Kind
        : kind[CoveringKindFacts.RoundTo] is null ? CoveringKindFacts.RoundTo : null;

    private static Fact? Missing(Window window, params Fact[] facts) => facts.FirstOrDefault(f => window.Item.Latest(f.Name)?.Stored is null);
}
