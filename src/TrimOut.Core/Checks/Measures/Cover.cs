using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Measures;

/// <summary>How deep the head cover of a unit, or the unit without one, sits in its opening.</summary>
/// <param name="Depth">Depth of the opening.</param>
/// <param name="Setback">Distance of the front from the room face.</param>
/// <param name="Reach">How far it reaches back from its front.</param>
/// <param name="Needed">The least depth in which the brackets hold.</param>
internal readonly record struct Cover(Length Depth, Length Setback, Length Reach, Length Needed)
{
    /// <summary>How it fits.</summary>
    public RevealFit Fit => RevealFits.Of(Depth, Setback, Reach, Needed);

    /// <summary>The figures of an inside mount; null with what is missing, or null twice where they do not apply.</summary>
    public static (Cover? Figures, Outcome.NotChecked? Unknown) Of(Unit unit)
    {
        if (unit.Window.Mount == Mount.Outside)
            return default;
        if (unit.Kind is not { } kind || kind[CoveringKindFacts.DepthNeeded] is not { } needed)
            return (null, NotChecked.Of(unit.Kind, CoveringKindFacts.DepthNeeded, unit, UnitFacts.Kind));
        if (unit.HeadCover is not { } cover)
            return (null, NotChecked.Of(unit, UnitFacts.HeadCover));
        if (unit.Window.Depth is not { } depth)
            return (null, NotChecked.Of(unit.Window, WindowFacts.Depth));
        if (cover.Depth is { } reach)
        {
            return (unit.Setback ?? kind[CoveringKindFacts.Setback]) is { } setback
                ? (new Cover(depth, setback, reach, needed), null)
                : (null, NotChecked.Of(kind, CoveringKindFacts.Setback));
        }
        if (!cover.IsNone)
            return (null, NotChecked.Of(cover, HeadCoverFacts.Depth));
        return kind[CoveringKindFacts.DepthFlush] is { } flush
            ? (new Cover(depth, Length.Zero, flush, needed), null)
            : (null, NotChecked.Of(kind, CoveringKindFacts.DepthFlush));
    }

    /// <summary>Its figures for whoever asks.</summary>
    public Working Working(Unit unit, string formula)
    {
        var figures = this;
        return Checks.Working.Of(formula, () =>
        [
            ("depth", figures.Depth.In(unit)), ("setback", figures.Setback.In(unit)), ("reaches back", figures.Reach.In(unit)),
                ("depth needed", figures.Needed.In(unit)),
        ]);
    }
}
