using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Where the middle screw of a unit goes.</summary>
internal static class MiddleScrew
{
    /// <summary>What a screw and its driver take on each side: common practice, no published source.</summary>
    public static readonly Length Around = Length.FromInches(0, 1, 2);

    /// <summary>
    /// From the left end of the unit as it is made, at its widest while that is not known: as measured, else as the sheet plans it; null with what is missing,
    /// or null twice for a kind without such a screw.
    /// </summary>
    public static (Length? At, Outcome.NotChecked? Unknown) Of(Unit unit) =>
        At(unit, measured => measured, planned => WidthTakenOff.Widest(unit) / 2 + planned);

    /// <summary>The same from the left of the opening.</summary>
    public static (Length? At, Outcome.NotChecked? Unknown) Along(Unit unit) => At(unit, measured => LeftEnd(unit) + measured,
        planned => unit.Place is { } place ? (place.From + place.To) / 2 + planned : null);

    /// <summary>Whether it was measured from the end of the unit, where the sheet plans it from the middle.</summary>
    public static bool IsMeasured(Unit unit) => unit.Item.Get(UnitFacts.MiddleScrew) is not null;

    /// <summary>Where the left end of a unit lies in its opening, at its widest while its made width is not known; null while its part is not known.</summary>
    public static Length? LeftEnd(Unit unit) => WidthTakenOff.Widest(unit) is { } wide ? unit.Over(wide)?.From : null;

    /// <remarks>A kind of before there was <see cref="Companion.Asked"/> has no screw where its sheet was left blank: it keeps that meaning.</remarks>
    private static (Length? At, Outcome.NotChecked? Unknown) At(Unit unit, Func<Length, Length?> asMeasured, Func<Length, Length?> asPlanned)
    {
        if (unit.Kind is not { } kind)
            return (null, NotChecked.Of(unit, UnitFacts.Kind));
        var planned = kind[CoveringKindFacts.MiddleScrew];
        if (unit.Item.Get(UnitFacts.MiddleScrew) is { } measured)
            return Known(asMeasured(measured));
        if (planned is null && kind.Item.Latest(Companion.Asked(CoveringKindFacts.MiddleScrew.Name))?.Stored is not null)
            return (null, NotChecked.Of(kind, CoveringKindFacts.MiddleScrew));
        return planned is null || planned == CoveringKindFacts.None ? default : Known(asPlanned(planned.Value));

        (Length?, Outcome.NotChecked?) Known(Length? at) => at is null
            ? (null, unit.Place is null ? NotChecked.Of(unit.Window, WindowFacts.RoughWidth) : NotChecked.MadeWidthOf(unit))
            : (at, null);
    }
}
