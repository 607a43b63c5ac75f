using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Brackets as they are fixed stand inside the reveal.</summary>
/// <remarks>
/// <para>Why: a bracket that reaches farther back than the reveal is deep stands in the glass, or one of the figures is misread. A mark of
/// the tape for each of the two figures is let pass.</para>
/// <para>To clear: read the setback again, or fix the brackets nearer to the room face.</para>
/// </remarks>
public sealed class SetbackPastReveal : UnitCheck
{
    private static readonly Message TooFar = new("Set back {0}, the brackets reach {1} back in an opening that is {2} deep.");
    private static readonly Message SetBackLess = new("Read it again; if it stays, set the brackets back {0} or less.");
    private static readonly Message SetBackBySheet = new("Read it again; if it stays, set the brackets back {0}, as the sheet has it.");
    private static readonly Message Again = new("Read setback and depth again; if they stay, mount it outside.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("setback-past-reveal", "Brackets are set back past the opening", Severity.Stop, Phase.Hang,
        new Source(Source.MakersSheet, "inside: setback as measured + bracket back <= depth + 2 marks of the tape"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Window.Mount is not { } mount)
            return NotChecked.Of(subject.Window, WindowFacts.Mount);
        if (mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        if (subject.Setback is not { } setback)
            return NotChecked.Of(subject, UnitFacts.Setback);
        if (subject.Window.Depth is not { } depth)
            return NotChecked.Of(subject.Window, WindowFacts.Depth);
        if (subject.Kind?[CoveringKindFacts.EndBracketBack] is not { } back)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.EndBracketBack, subject, UnitFacts.Kind);
        var working = Working.Of(Info.Source.Formula, () =>
            [("setback", setback.In(subject)), ("bracket back", back.In(subject)), ("depth", depth.In(subject))]);
        return setback + back <= depth + TapeMark.Of(subject.House.DisplayUnits) * 2
            ? new Outcome.Fine(working)
            : new Outcome.Found(TooFar.With(setback, Arg.AtLeast(setback + back), depth),
                subject.Kind[CoveringKindFacts.Setback] is { } sheet && sheet + back <= depth ? SetBackBySheet.With(sheet)
                    : depth >= back ? SetBackLess.With(Arg.AtMost(depth - back)) : Again,
                FieldRef.To(subject.Item, UnitFacts.Setback), working);
    }
}
