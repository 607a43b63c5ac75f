using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>A step that is marked done has the evidence that it asks for.</summary>
/// <remarks>
/// <para>Why: a mark says that somebody was there; only the figure says that it was done.</para>
/// <para>To clear: write the evidence, take the mark away, or mark it not needed with the reason.</para>
/// </remarks>
public sealed class StepWithoutEvidence : WideCheck
{
    private readonly Dictionary<Phase, CheckInfo> _byPhase;

    /// <summary>The rule.</summary>
    public StepWithoutEvidence() => _byPhase = PhaseNames.All.ToDictionary(p => p, p => Info with { Phase = p });

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("step-without-evidence", "Step is marked done and its evidence is missing", Severity.Stop, Phase.WalkThrough,
        "marks of the steps and their evidence", new Source(Source.CommonPractice, "marked done = all of its evidence is there; reported in the phase of the step"));

    /// <inheritdoc/>
    public override System.Collections.Immutable.ImmutableArray<Fact> Watches { get; } = [];

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house) => Progress.Walkers(house).SelectMany(Run);

    private IEnumerable<CheckResult> Run(Subject subject) =>
        from phase in PhaseNames.All
        let done = StepList.Of(phase, subject).Where(s => subject.MarkOf(s) is { NotNeededBecause: null }).ToList()
        where done.Count > 0
        select new CheckResult(_byPhase[phase], subject.Item, Judge(subject, done));

    private static Outcome Judge(Subject subject, IReadOnlyList<Step> done)
    {
        var lacking = done.Select(s => (Step: s, Missing: Progress.Missing(subject, s))).Where(s => s.Missing.Count > 0).ToList();
        if (lacking.Count == 0)
            return new Outcome.Fine();
        var first = lacking[0].Step.Evidence.FirstOrDefault(f => Progress.Holder(subject, f)?.Latest(f.Name)?.Stored is null);
        var field = first is not null && Progress.Holder(subject, first) is { } holder ? FieldRef.To(holder, first) : FieldRef.To(subject.Item, UnitFacts.Step, lacking[0].Step.Id);
        return new Outcome.Found(string.Join(" ", lacking.Select(l => $"\"{l.Step.Label}\" is marked done; missing: {string.Join(", ", l.Missing.Select(m => m.ToLowerInvariant()))}.")),
            "Write what is missing, or take the mark away.", field);
    }
}
