using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>A step that is marked done has the evidence that it asks for.</summary>
/// <remarks>
/// <para>Why: a mark says that somebody was there; only the figure says that it was done.</para>
/// <para>To clear: write the evidence, take the mark away, or mark it not needed with the reason.</para>
/// </remarks>
public sealed class StepWithoutEvidence : SubjectCheck
{
    private static readonly Message Lacking = new("\"{0}\" is marked done; missing: {1}.");
    private static readonly Message AllLacking = new("{0}");
    private static readonly Message WriteMissingNow = new("Write what is missing, or mark the step not needed and say why: the house is signed off.");
    private static readonly Message WriteMissing = new("Write what is missing, or clear the mark.");

    private readonly IReadOnlyDictionary<Phase, CheckInfo> _byPhase;
    private readonly StepList _steps;

    /// <summary>The rule.</summary>
    /// <param name="steps">The list of steps that the work is done by; this program's where none is given.</param>
    public StepWithoutEvidence(StepList? steps = null)
    {
        _steps = steps ?? StepList.Shipped;
        _byPhase = Info.InEachPhase();
    }

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("step-without-evidence", "Step is marked done but its evidence is missing", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice, "marked done = all of its evidence is there; reported in the phase of the step"));

    internal override IEnumerable<string> SubjectIds(House house) => Subjects.Walkers.Ids(house);

    internal override Subject Find(House house, string id) => Subjects.Walkers.Find(house, id);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        ImmutableArray<CheckResult>.Builder? results = null;
        var steps = _steps.Steps;
        for (var at = 0; at < steps.Length;)
        {
            var phase = steps[at].Phase;
            List<Step>? done = null;
            for (; at < steps.Length && steps[at].Phase == phase; at++)
            {
                var step = steps[at];
                if (step.Subject == subject.Item.Kind && subject.MarkOf(step) is { NotNeededBecause: null } && (subject is not Unit unit || step.Applies(unit)))
                    (done ??= []).Add(step);
            }
            if (done is not null)
                (results ??= ImmutableArray.CreateBuilder<CheckResult>()).Add(new CheckResult(_byPhase[phase], subject.Item, Judge(subject, done)));
        }
        return results?.ToImmutable() ?? [];
    }

    private Outcome Judge(Subject subject, IReadOnlyList<Step> done)
    {
        if (done.All(s => Progress.IsComplete(subject, s, _steps)))
            return new Outcome.Fine();
        var lacking = done.Select(s => (Step: s, Missing: Progress.Missing(subject, s, _steps, small: true))).Where(s => s.Missing.Count > 0).ToList();
        var first = _steps.EvidenceOf(lacking[0].Step, subject).FirstOrDefault(f => Progress.Lacks(subject, f));
        var field = first is not null && Progress.Holder(subject, first) is { } holder ? FieldRef.To(holder, first)
            : FieldRef.To(subject.Item, UnitFacts.Step, lacking[0].Step.Id);
        return new Outcome.Found(
            AllLacking.With(Arg.All(lacking.Select(l => (Arg)Lacking.With(Arg.Label(l.Step), Arg.All(l.Missing))), " ")),
            SignOff.IsDone(subject.House) ? WriteMissingNow : WriteMissing, field);
    }
}
