using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>A wide unit has its center support before the job goes on.</summary>
/// <remarks>
/// <para>Why: without it the head rail sags, and a roll that sags rubs in its middle.</para>
/// <para>To clear: fix the support, and mark that it is clear of the brackets and their screws.</para>
/// </remarks>
public sealed class CentreSupportLeftOut : UnitCheck
{
    private static readonly Message NotMarked = new("It is {0} wide and needs a center support from {1} on; nobody marked one, and the job has gone on.");
    private static readonly Message FixIt = new("Fix the center support now, and mark \"{0}\".");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("centre-support-left-out", "Wide unit without its center support", Severity.Stop, Phase.Hang,
        new Source(Source.MakersSheet, "from the sheet's width on: the step of the support is marked before any step of a later phase"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Kind?[CoveringKindFacts.CentreFrom] is not { } from)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.CentreFrom, subject, UnitFacts.Kind);
        if (subject.Kind.NeedsNoCentreSupport)
            return new Outcome.DoesNotApply();
        if (subject.OwnWidth is not { } width)
            return NotChecked.Of(subject.Window, subject.PartWidth is null ? WindowFacts.RoughWidth : WindowFacts.OverlapEachSide);
        var step = StepList.Find("centre-support-clear")!;
        if (subject.NeedsCentreSupport != true || !StepList.All.Any(s => s.Subject == ItemKind.Unit && s.Phase > Phase.Hang && subject.MarkOf(s) is not null))
            return new Outcome.DoesNotApply();
        return subject.MarkOf(step) is { NotNeededBecause: null }
            ? new Outcome.Fine()
            : new Outcome.Found(NotMarked.With(width, from), FixIt.With(Arg.Label(step)),
                FieldRef.To(subject.Item, UnitFacts.Step, step.Id),
                Working.Of(Info.Source.Formula, () => [("width", width.In(subject)), ("from", from.In(subject))]));
    }
}
