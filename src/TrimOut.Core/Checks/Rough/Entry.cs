using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Rough;

/// <summary>Where a cable leaves the wall, and what the brackets of its unit take up there.</summary>
internal static class Entry
{
    /// <summary>The fact that says how far from the jamb: as found after drywall, else as planned.</summary>
    public static Fact FromJambFact(Unit unit) => unit.Item.Get(UnitFacts.EntryAsBuilt) is null ? UnitFacts.EntryFromJamb : UnitFacts.EntryAsBuilt;

    /// <summary>Which fact of the entry is missing; null when none is.</summary>
    public static Outcome.NotChecked? Unknown(Unit unit) =>
        unit.EntryFromJamb is null ? Checks.NotChecked.Of(unit, UnitFacts.EntryFromJamb)
        : unit.EntryBack is null ? Checks.NotChecked.Of(unit, UnitFacts.EntryBack)
        : unit.EntryBelowHead is null ? Checks.NotChecked.Of(unit, UnitFacts.EntryBelowHead)
        : null;

    /// <summary>Which fact of the brackets is missing on the sheet; null when none is.</summary>
    public static Outcome.NotChecked? Unknown(CoveringKind kind) =>
        new[] { CoveringKindFacts.Setback, CoveringKindFacts.EndBracketBack, CoveringKindFacts.EndBracketDown }.FirstOrDefault(f => kind[f] is null) is { } fact
            ? Checks.NotChecked.Of(kind, fact)
            : null;

    /// <summary>The entry of a unit of which no fact is missing.</summary>
    public static (Length FromJamb, Length Back, Length BelowHead) Of(Unit unit) =>
        (unit.EntryFromJamb!.Value, unit.EntryBack!.Value, unit.EntryBelowHead!.Value);

    /// <summary>What a bracket takes up, by a sheet on which no fact is missing.</summary>
    public static Footprint Footprint(Unit unit, Length from, Length to)
    {
        var kind = unit.Kind!;
        var front = unit.Setback ?? kind[CoveringKindFacts.Setback]!.Value;
        return new Footprint(from, to, front, front + kind[CoveringKindFacts.EndBracketBack]!.Value, kind[CoveringKindFacts.EndBracketDown]!.Value);
    }
}
