using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>No step is open where a later phase is done, and none at all once the house is signed off.</summary>
/// <remarks>
/// <para>Why: what nobody did is found when the wall is painted, or by the owner. Once the house is signed it is a stop.</para>
/// <para>To clear: do it and mark it, or mark it not needed with the reason.</para>
/// </remarks>
public sealed class StepPassedOver : SubjectCheck
{
    private static readonly Message PassedOver = new("Passed over: {0}. \"{1}\" is done already.");
    private static readonly Message SignedOver = new("The house is signed off with this open: {0}.");
    private static readonly Message DoItNow = new("Do it now and mark it, or mark it not needed and say why.");
    private static readonly Message DoItBefore = new("Do it and mark it before anybody relies on that signature, or mark it not needed and say why.");

    private readonly Dictionary<Phase, CheckInfo> _cautions;
    private readonly Dictionary<Phase, CheckInfo> _stops;

    /// <summary>The rule.</summary>
    public StepPassedOver() => (_cautions, _stops) = (PhaseNames.All.ToDictionary(p => p, p => Info with { Phase = p }),
        PhaseNames.All.ToDictionary(p => p, p => Info with { Phase = p, Severity = Severity.Stop }));

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("step-passed-over", "Step was skipped", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "a later phase is done = every step before it is marked; a stop once the house is signed off; " +
            "reported in the phase of the step"));

    internal override IEnumerable<string> SubjectIds(House house) => Subjects.Walkers.Ids(house);

    internal override Subject Find(House house, string id) => Subjects.Walkers.Find(house, id);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        var asked = PhaseNames.All.Select(p => StepList.Of(p, subject).Where(s => s.Id != SignOff.StepId).ToList()).ToList();
        var open = asked.ConvertAll(steps => steps.FindAll(s => subject.MarkOf(s) is null));
        var signed = SignOff.IsDone(subject.House);
        Step? later = null;
        var results = new List<CheckResult>();
        foreach (var phase in PhaseNames.All.Reverse())
        {
            var (steps, left) = (asked[(int)phase], open[(int)phase]);
            if (left.Count > 0 && signed)
                results.Insert(0, Result(_stops, SignedOver.With(Labels(left)), DoItBefore, left));
            else if (left.Count > 0 && later is not null)
                results.Insert(0, Result(_cautions, PassedOver.With(Labels(left), Arg.Label(later)), DoItNow, left));
            else if (steps.Count > 0 && left.Count == 0)
                later = steps[0];
        }
        return results.Count > 0 ? results : later is null && !signed ? [] : [new CheckResult(Info, subject.Item, new Outcome.Fine())];

        CheckResult Result(Dictionary<Phase, CheckInfo> infos, Sentence message, Sentence mend, List<Step> left) => new(infos[left[0].Phase], subject.Item,
            new Outcome.Found(message, mend, FieldRef.To(subject.Item, UnitFacts.Step, left[0].Id)));
    }

    private static Arg Labels(IEnumerable<Step> steps) => Arg.All(steps.Select(Arg.Label));
}
