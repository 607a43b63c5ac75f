using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Where the middle screw of a unit goes, from the left end of the unit.</summary>
internal static class MiddleScrew
{
    /// <summary>What a screw and its driver take on each side: common practice, no published source.</summary>
    public static readonly Length Around = Length.FromInches(0, 1, 2);

    /// <summary>The place as measured, else as the sheet plans it; null with what is missing, or null twice for a kind without such a screw.</summary>
    /// <remarks>A kind of before there was <see cref="Companion.Asked"/> has no screw where its sheet was left blank: it keeps that meaning.</remarks>
    public static (Length? At, Outcome.NotChecked? Unknown) Of(Unit unit)
    {
        if (unit.Kind is not { } kind)
            return (null, NotChecked.Of(unit, UnitFacts.Kind));
        var measured = unit.Item.Get(UnitFacts.MiddleScrew);
        var planned = kind[CoveringKindFacts.MiddleScrew];
        if (measured is null && planned is null && kind.Item.Latest(Companion.Asked(CoveringKindFacts.MiddleScrew.Name))?.Stored is not null)
            return (null, NotChecked.Of(kind, CoveringKindFacts.MiddleScrew));
        if (measured is null && (planned is null || planned == CoveringKindFacts.None))
            return default;
        return measured is not null ? (measured, null)
            : unit.OwnWidth is { } width ? (width / 2 + planned!.Value, null)
            : (null, NotChecked.Of(unit.Window, unit.PartWidth is null ? WindowFacts.RoughWidth : WindowFacts.OverlapEachSide));
    }

    /// <summary>Where the left end of a unit lies in its opening: in the middle of its part; null while that is not known.</summary>
    public static Length? LeftEnd(Unit unit) => (unit.Place, unit.OwnWidth) is ({ } place, { } own) ? place.From + (place.To - place.From - own) / 2 : null;
}
