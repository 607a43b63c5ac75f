using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>The roll turns freely inside its head cover.</summary>
/// <remarks>
/// <para>Why: a roll that rubs stops short of its open limit and marks the fabric.</para>
/// <para>To clear: a larger head cover, or a thinner fabric.</para>
/// </remarks>
public sealed class RollPastHeadCover : UnitCheck
{
    private static readonly Message TooLarge = new("With {0} wound on it the roll needs {1}; {2} has {3}.");
    private static readonly Message OrderOther = new("Order a larger head cover or a thinner fabric.");
    private static readonly Message AskMaker = new("Ask the maker for a larger head cover.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("roll-past-head-cover", "Roll is too large for its head cover", Severity.Stop, Phase.Order,
        new Source("Wound-sheet formula D = sqrt(d^2 + 4 t L / pi); two thicknesses more for the step of the outer turn",
            "D + 2 t <= room inside the head cover"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Kind is not { RaisedForm: { } form } kind)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.RaisedForm, subject, UnitFacts.Kind);
        if (form != RaisedForm.Roll)
            return new Outcome.DoesNotApply();
        if (subject.HeadCover is not { } cover)
            return NotChecked.Of(subject, UnitFacts.HeadCover);
        if (cover.RoomInside is not { } room)
            return cover.IsNone ? new Outcome.DoesNotApply() : NotChecked.Of(cover, HeadCoverFacts.RoomInside);
        if (new[] { CoveringKindFacts.Tube, CoveringKindFacts.FabricThickness, CoveringKindFacts.ExtraFabric }.FirstOrDefault(f => kind[f] is null
            || (f != CoveringKindFacts.ExtraFabric && kind[f]!.Value == Units.Length.Zero)) is { } missing)
            return NotChecked.Of(kind, missing);
        if (subject.Drop is not { } drop)
            return NotChecked.Of(subject.Window, subject.Window.KnownHeight is null ? WindowFacts.RoughHeight : WindowFacts.HeadAbove);
        var (tube, fabric, wound) = (kind[CoveringKindFacts.Tube]!.Value, kind[CoveringKindFacts.FabricThickness]!.Value, drop
            + kind[CoveringKindFacts.ExtraFabric]!.Value);
        var needed = Roll.RoomToTurn(tube, fabric, wound);
        var working = Working.Of(Info.Source.Title, () =>
        [
            ("tube", tube.In(subject)), ("fabric", fabric.In(subject)), ("length wound", wound.In(subject)),
            ("roll", Roll.Diameter(tube, fabric, wound).About(subject)), ("room to turn", needed.About(subject)), ("room inside", room.In(subject)),
        ]);
        return needed <= room
            ? new Outcome.Fine(working)
            : new Outcome.Found(TooLarge.With(wound, Arg.AtLeast(needed), Arg.Name(cover), Arg.AtMost(room)),
                Moment.NotOrdered(subject) ? OrderOther : AskMaker,
                FieldRef.To(subject.Item, UnitFacts.HeadCover), working);
    }
}
