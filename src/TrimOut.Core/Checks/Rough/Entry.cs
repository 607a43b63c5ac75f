using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Rough;

/// <summary>Where a cable leaves the wall, and what the brackets of its unit take up there.</summary>
internal static class Entry
{
    /// <summary>No cable that is pulled from window to panel is thicker: common practice, no published source.</summary>
    private static readonly Length Thickest = Length.FromInches(1);

    /// <summary>The fact that says how far from the jamb: as found after drywall, else as planned.</summary>
    public static Fact FromJambFact(Unit unit) => unit.Item.Get(UnitFacts.EntryAsBuilt) is null ? UnitFacts.EntryFromJamb : UnitFacts.EntryAsBuilt;

    /// <summary>Which fact of the entry, or of the opening along which it lies, is missing; null when none is.</summary>
    public static Outcome.NotChecked? Unknown(Unit unit) =>
        unit.EntrySide is null ? Checks.NotChecked.Of(unit, UnitFacts.EntrySide)
        : unit.EntryFromJamb is null ? Checks.NotChecked.Of(unit, UnitFacts.EntryFromJamb)
        : unit.EntryBack is null ? Checks.NotChecked.Of(unit, UnitFacts.EntryBack)
        : unit.EntryBelowHead is null ? Checks.NotChecked.Of(unit, UnitFacts.EntryBelowHead)
        : unit.Window.KnownWidth is null ? Checks.NotChecked.Of(unit.Window, WindowFacts.RoughWidth)
        : null;

    /// <summary>Which fact of the brackets is missing on the sheet; null when none is.</summary>
    public static Outcome.NotChecked? Unknown(CoveringKind kind) =>
        new[] { CoveringKindFacts.Setback, CoveringKindFacts.EndBracketBack, CoveringKindFacts.EndBracketDown }.FirstOrDefault(f => kind[f] is null) is { } fact
            ? Checks.NotChecked.Of(kind, fact)
            : null;

    /// <summary>The entry of a unit of which no fact is missing: its middle, along the opening from the left too, and half of what its hole takes.</summary>
    public static (Length FromJamb, Length Along, Length Back, Length BelowHead, Length Radius) Of(Unit unit) =>
        (unit.EntryFromJamb!.Value, unit.EntryAlong!.Value, unit.EntryBack!.Value, unit.EntryBelowHead!.Value, unit.EntryRadius);

    /// <summary>The diameter of the cable, where it is not known and a hole for the thickest one would be caught; null where it makes no difference.</summary>
    /// <param name="unit">The unit, whose entry is clear of a cable of no width.</param>
    /// <param name="caught">Whether a hole of that radius is caught.</param>
    public static Outcome.NotChecked? DiameterUnknown(Unit unit, Func<Length, bool> caught) =>
        unit.Run is { Cable.Diameter: null } run && caught(Thickest / 2) ? Checks.NotChecked.Of(run.Cable, CableTypeFacts.Diameter, run, RunFacts.Cable) : null;

    /// <summary>A place along the opening as somebody measures it who stands at the side of the entry.</summary>
    public static Length FromEntrySide(Unit unit, Length along) => unit.EntrySide == Side.Left ? along : unit.Window.KnownWidth!.Value - along;

    /// <summary>What a bracket takes up along the opening, by a sheet on which no fact is missing.</summary>
    public static Footprint Footprint(Unit unit, Length from, Length to)
    {
        var kind = unit.Kind!;
        var front = unit.Setback ?? kind[CoveringKindFacts.Setback]!.Value;
        return new Footprint(from, to, front, front + kind[CoveringKindFacts.EndBracketBack]!.Value, kind[CoveringKindFacts.EndBracketDown]!.Value);
    }
}
