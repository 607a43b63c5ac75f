using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>
/// No step is open where a later phase is done, none that a step after power presupposes once that is marked, none at all once the house is signed off, and
/// none that is asked again since something was replaced.
/// </summary>
/// <remarks>
/// <para>Why: what nobody did is found when the wall is painted, or by the owner. Once the house is signed it is a stop; of a window that came later, and of
/// what is asked again because something was replaced, it is a caution.</para>
/// <para>To clear: do it and mark it, or mark it not needed with the reason.</para>
/// </remarks>
public sealed class StepPassedOver : SubjectCheck
{
    private static readonly Message PassedOver = new("Passed over: {0}. \"{1}\" is done already.");
    private static readonly Message MarkedBefore = new("\"{0}\" is marked done, and not done yet: {1}.", "marked-before");
    private static readonly Message StepOf = new("{0} of {1}");
    private static readonly Message StepOfMany = new("{0} of {1} and {2} more");
    private static readonly Message SignedOver = new("The house is signed off with this open: {0}.");
    private static readonly Message ToDoAgain = new("To be done again: {0} ({1}).", "again");
    private static readonly Message DoItNow = new("Do it now and mark it, or mark it not needed and say why.");
    private static readonly Message ClearTheMark = new("Clear the mark until what comes first is done, or mark that not needed and say why.");
    private static readonly Message DoItBefore = new("Do it and mark it before anybody relies on that signature, or mark it not needed and say why.");

    private static readonly Message DoItAgain = new("Do it once more and mark it, or mark it not needed and say why; nothing else is asked again.");

    private const int MostNames = 6;

    private readonly IReadOnlyDictionary<Phase, CheckInfo> _cautions;
    private readonly IReadOnlyDictionary<Phase, CheckInfo> _stops;

    /// <summary>The rule.</summary>
    public StepPassedOver() => (_cautions, _stops) = (Info.InEachPhase(), (Info with { Severity = Severity.Stop }).InEachPhase());

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("step-passed-over", "Step is still to be done", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "a later phase is done = every step before it is marked; a step after power is marked = what it presupposes is; " +
            "a stop once the house is signed off, but of what came later or is asked again; reported in the phase of the step"));

    internal override IEnumerable<string> SubjectIds(House house) => Subjects.Walkers.Ids(house);

    internal override Subject Find(House house, string id) => Subjects.Walkers.Find(house, id);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        var asked = PhaseNames.All.Select(p => StepList.Of(p, subject).Where(s => s.Id != SignOff.StepId).ToList()).ToList();
        var open = asked.ConvertAll(steps => steps.FindAll(s => subject.MarkOf(s) is null));
        var signed = SignOff.IsDone(subject.House) && !SignOff.CameLater(subject);
        var serviced = subject.House.ItemsOf(ItemKind.Service).Any();
        Step? later = null;
        var results = new List<CheckResult>();
        foreach (var phase in PhaseNames.All.Reverse())
        {
            var (steps, all) = (asked[(int)phase], open[(int)phase]);
            var again = serviced ? all.Select(s => (Step: s, Since: AskedAgain.Since(subject, s))).Where(s => s.Since is not null).ToList() : [];
            var left = again.Count == 0 ? all : all.FindAll(s => again.TrueForAll(a => a.Step != s));
            foreach (var of in again.GroupBy(a => a.Since!.Id).Reverse())
            {
                var toDo = of.Select(a => a.Step).ToList();
                results.Insert(0, Result(_cautions, ToDoAgain.With(Labels(toDo), Arg.Name(of.First().Since!)), DoItAgain, toDo));
            }
            if (left.Count > 0 && signed)
                results.Insert(0, Result(_stops, SignedOver.With(Labels(left)), DoItBefore, left));
            else if (left.Count > 0 && later is not null)
                results.Insert(0, Result(_cautions, PassedOver.With(Labels(left), Arg.Label(later)), DoItNow, left));
            else if (steps.Count > 0 && all.Count == 0)
                later = steps[0];
        }
        if (!signed)
            results.AddRange(Early(subject, [.. results.SelectMany(r => open[(int)r.Check.Phase])]));
        return results.Count > 0 ? results : later is null && !signed ? [] : [new CheckResult(Info, subject.Item, new Outcome.Fine())];

        CheckResult Result(IReadOnlyDictionary<Phase, CheckInfo> infos, Sentence message, Sentence mend, List<Step> left) => new(
            infos[left[0].Phase], subject.Item,
            new Outcome.Found(message, mend, FieldRef.To(subject.Item, UnitFacts.Step, left[0].Id)));
    }

    /// <summary>Marks of steps after power over open ones that they presuppose; a mark that says why it was made all the same is none.</summary>
    private IEnumerable<CheckResult> Early(Subject subject, HashSet<Step> told)
    {
        foreach (var step in StepList.All.Where(s => s.Phase > Phase.Power && s.Subject == subject.Item.Kind && subject.MarkOf(s) == StepMark.Done))
        {
            var open = StepOrder.OpenBefore(step, subject, StepList.Shipped).Where(b => b.Before.Phase < step.Phase && !told.Contains(b.Before))
                .ToList();
            if (open.Count == 0)
                continue;
            var before = Arg.All(open.Select(b => b.Lacking is [var one] && one.Id == subject.Id ? Arg.Label(b.Before) : OfOthers(b.Before, b.Lacking)));
            yield return new CheckResult(_cautions[step.Phase], subject.Item,
                new Outcome.Found(MarkedBefore.With(Arg.Label(step), before), ClearTheMark, FieldRef.To(subject.Item, UnitFacts.Step, step.Id)));
        }
    }

    private static Arg OfOthers(Step step, IReadOnlyList<Subject> lacking)
    {
        var (label, names) = (Arg.Label(step), lacking.Select(s => Arg.Name(s)).ToList());
        return lacking.Count <= MostNames ? StepOf.With(label, Arg.All(names))
            : StepOfMany.With(label, Arg.Of(names, Arg.All(names.Take(MostNames))), lacking.Count - MostNames);
    }

    private static Arg Labels(IEnumerable<Step> steps) => Arg.All(steps.Select(Arg.Label));
}
