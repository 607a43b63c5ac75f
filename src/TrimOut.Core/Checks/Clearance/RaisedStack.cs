using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>The raised stack of a unit, and how far below the head of the opening it ends.</summary>
/// <param name="Drop">Height of the unit: ordered, else of the opening.</param>
/// <param name="Height">Height of the stack.</param>
/// <param name="Above">How far above the opening the unit starts.</param>
internal readonly record struct RaisedStack(Length Drop, Length Height, Length Above)
{
    /// <summary>The end of the stack below the head of the opening; negative when it stays above.</summary>
    public Length BelowHead => Height - Above;

    /// <summary>The stack of a unit; null with what is missing, or null twice for a kind that does not stack.</summary>
    public static (RaisedStack? Figures, Outcome.NotChecked? Unknown) Of(Unit unit)
    {
        if (unit.Kind is not { RaisedForm: { } form } kind)
            return (null, NotChecked.Of(unit.Kind, CoveringKindFacts.RaisedForm, unit, UnitFacts.Kind));
        if (form != RaisedForm.Stack)
            return default;
        if (kind[CoveringKindFacts.StackFixed] is not { } fixedPart)
            return (null, NotChecked.Of(kind, CoveringKindFacts.StackFixed));
        if (kind.Item.Get(CoveringKindFacts.StackShare) is not { } share)
            return (null, NotChecked.Of(kind, CoveringKindFacts.StackShare));
        if (unit.Window.Mount is not { } mount)
            return (null, NotChecked.Of(unit.Window, WindowFacts.Mount));
        var above = mount == Mount.Inside ? Length.Zero : unit.Window.Item.Get(WindowFacts.HeadAbove);
        if (above is not { } starts)
            return (null, NotChecked.Of(unit.Window, WindowFacts.HeadAbove));
        return (unit.Item.Get(UnitFacts.OrderHeight) ?? unit.Window.KnownHeight + starts) is { } drop
            ? (new RaisedStack(drop, Stack.Height(fixedPart, share, drop), starts), null)
            : (null, NotChecked.Of(unit.Window, WindowFacts.RoughHeight));
    }

    /// <summary>Its figures for whoever asks, with those that it is held against.</summary>
    public Working Working(Unit unit, string formula, params (string Name, string Value)[] more)
    {
        var figures = this;
        var kind = unit.Kind!;
        return Checks.Working.Of(formula, () =>
        [
            ("drop", figures.Drop.In(unit)), .. kind.RaisedForm == RaisedForm.Roll
                ? (ReadOnlySpan<(string, string)>)[("tube", kind.Show(CoveringKindFacts.Tube)), ("fabric", kind.Show(CoveringKindFacts.FabricThickness))]
                : [("fixed part", kind.Show(CoveringKindFacts.StackFixed)), ("share of the drop", kind.Show(CoveringKindFacts.StackShare))],
            (kind.RaisedForm == RaisedForm.Roll ? "roll" : "stack", figures.Height.About(unit)), ("starts above the opening", figures.Above.In(unit)), .. more,
        ]);
    }
}
