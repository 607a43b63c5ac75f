using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;

namespace TrimOut.Screens.Shell;

/// <summary>
/// Why a size that is worked out elsewhere can't be offered yet, or on what the offer rests: whoever finds the line empty looks for the reason.
/// </summary>
internal static class OfferWaits
{
    /// <summary>
    /// What the offer of a detail waits for, or which values it rests on that nobody checked, in a sentence; null where neither is so.
    /// </summary>
    public static string? For(Unit unit, Fact fact) => fact == UnitFacts.OrderWidth && unit.WorkedOutWidth is null ? Waits(unit, Width(unit))
        : fact == UnitFacts.OrderHeight && unit.WorkedOutHeight is null ? Waits(unit, Height(unit))
        : UncheckedValues.Read(unit, u => Offers.For(u, fact)) is ({ Length: > 0 } offered, { Count: > 0 } by)
            ? $"{offered} is offered by values that nobody checked against a maker's sheet: {string.Join(", ", by.Select(f => f.Label))}."
        : null;

    private static string? Waits(Unit unit, Fact? fact) => fact is null ? null
        : FactTable.IsKit(fact.Subject) ? $"Nothing is offered: {fact.Label} of {unit.Kind!.Name} is not in the kit (9)."
        : $"Nothing is offered: {fact.Label} of {(fact.Subject == ItemKind.Window ? unit.Window.Tag : unit.Tag)} is not there yet: "
            + $"leave this line with Esc, d shows all details, / finds {fact.Label}.";

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
