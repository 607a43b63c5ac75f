using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>What was read or marked was read or marked of what is there now: of this output, this cable, this unit, these remotes.</summary>
/// <remarks>
/// <para>Why: volts that were read on one output say nothing of another one, and a motor that was changed is paired with nothing.</para>
/// <para>To clear: read again, or clear the mark and make it again once it is done; or put back what was written before, where nothing was moved. The order
/// of the history counts and no clock, a value that was put back counts as never changed, and a first value as what was there all the time.</para>
/// </remarks>
public sealed class ProofOutdated : SubjectCheck
{
    private static readonly Message All = new("{0}");
    private static readonly Message Changed = new("{1} was {2} and is {3} since {4}; shown before that: {0}.");
    private static readonly Message Joined = new("{1} is to move it since {2}; shown before that: {0}.", "joined");
    private static readonly Message AnotherCame = new("It was ordered again on {1}, and another one came; shown before that: {0}.", "another");
    private static readonly Message OfRun = new("{0} of {1}");
    private static readonly Message PowerAgain =
        new("See the splice, read volts and polarity again at the window and prove its output; make marks that are named once more. " +
            "If nothing was moved, put back what was written before.");
    private static readonly Message CableAgain =
        new("See where the cable ends and which one lies there, and read tails and loop again; or put back what was written before, if nothing was moved.");
    private static readonly Message PairAgain =
        new("Pair it again and move it from the hub and from each remote; then clear the old marks and make them again, or put back what was written before.");
    private static readonly Message LimitsAgain =
        new("Set its limits and presets again, write both gaps once more, and clear the old marks and make them again; or put back what was written before.");
    private static readonly Message CordAgain =
        new("Look at its cords again in every position, for a child's sake, and write who did; or put back what was written before.");

    private static readonly Fact[] OfTheRun = [RunFacts.Panel, RunFacts.Output, RunFacts.Cable, RunFacts.BranchesOff];

    private readonly IReadOnlyDictionary<Phase, CheckInfo> _cautions;
    private readonly IReadOnlyDictionary<Phase, CheckInfo> _stops;

    /// <summary>The rule.</summary>
    public ProofOutdated() => (_cautions, _stops) = (Info.InEachPhase(), (Info with { Severity = Severity.Stop }).InEachPhase());

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("proof-outdated", "Shown with something that was changed since", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "readings and marks come after the last change of what they were made with; a stop where volts are of another " +
            "output or loops of another cable; reported in the phase of the reading or mark"));

    internal override IEnumerable<string> SubjectIds(House house) => Subjects.Units.Ids(house);

    internal override Subject Find(House house, string id) => Subjects.Units.Find(house, id);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        var unit = (Unit)subject;
        var proofs = Proof.Of(unit).ToList();
        if (proofs.Count == 0)
            return [];
        var results = proofs.GroupBy(p => p.Phase).Select(p => Of(unit, p.Key, [.. p])).OfType<CheckResult>().ToList();
        return results.Count > 0 ? results : [new CheckResult(Info, subject.Item, new Outcome.Fine())];
    }

    private CheckResult? Of(Unit unit, Phase phase, ImmutableArray<Proof> proofs)
    {
        var outdated = new List<(Proof Proof, Sentence Said)>();
        var stop = false;
        foreach (var ground in proofs.SelectMany(p => p.With).Distinct())
        {
            var of = proofs.Where(p => p.With.Contains(ground)).ToList();
            // What was read of one value and of the next one is told by itself.
            foreach (var before in of.Where(p => ground.Before(p.Made) is not null).GroupBy(p => ground.Before(p.Made)!.Stored!, StringComparer.Ordinal))
            {
                var (was, now) = (ground.Before(before.First().Made)!, ground.Now!);
                outdated.Add((before.First(), Changed.With(Labels(before), Named(unit, ground), Said(ground.Fact, was), Said(ground.Fact, now), Day(now))));
                stop |= OfTheRun.Contains(ground.Fact) && (phase != Phase.RoughIn || ground.Fact == RunFacts.Cable);
            }
            if (of.Where(p => ground.IsNew(p.Made)).ToList() is [var first, ..] joined)
                outdated.Add((first, Joined.With(Labels(joined), Arg.Name(ground.Item), Day(ground.Now!))));
        }
        if (Another(unit) is { } again
            && proofs.Where(p => p.With.Any(g => g.Fact == UnitFacts.Serial) && again.IsAfter(p.Made)).ToList() is [var one, ..] older)
            outdated.Add((one, AnotherCame.With(Labels(older), Arg.Value(UnitFacts.ReorderedOn, again.Value!))));
        return outdated.Count == 0 ? null
            : new CheckResult((stop ? _stops : _cautions)[phase], unit.Item,
                new Outcome.Found(All.With(Arg.All(outdated.Select(o => (Arg)o.Said), " ")), MendOf(phase), outdated[0].Proof.Mends));
    }

    /// <summary>That it was ordered again and that another one came; null where it was not, or where nothing is written of that one.</summary>
    private static Head? Another(Unit unit) =>
        unit.Item.Latest(UnitFacts.ReorderedOn) is { Value: DateOnly } again && !unit.ComesAgain ? again : null;

    private static Sentence MendOf(Phase phase) => phase switch
    {
        Phase.RoughIn or Phase.CloseIn => CableAgain,
        Phase.Power => PowerAgain,
        Phase.Pair => PairAgain,
        Phase.Limits => LimitsAgain,
        _ => CordAgain,
    };

    private static Arg Named(Unit unit, Proof.Ground ground) => ground.Item.Id == unit.Id || ground.Item.Under == unit.Id
        ? Arg.Label(ground.Fact, small: false)
        : OfRun.With(Arg.Label(ground.Fact, small: false), Arg.Name(ground.Item));

    /// <summary>A value as it is shown; one that this version can't read as it is stored.</summary>
    private static Arg Said(Fact fact, Head head) => head.Value is { } value ? Arg.Value(fact, value) : Arg.Typed(head.Stored!);

    private static Arg Labels(IEnumerable<Proof> proofs) => Arg.All(proofs.Select(p => p.Label));

    private static Arg Day(Head head) => Arg.Value(UnitFacts.OrderedOn, DateOnly.FromDateTime(head.At.DateTime));
}
