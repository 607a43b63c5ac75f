using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>How far a phase is: steps said to be done or not needed, out of those that there are.</summary>
/// <param name="Done">Steps said to be done or not needed.</param>
/// <param name="Total">Steps that there are.</param>
public readonly record struct Progress(int Done, int Total)
{
    /// <summary>Whether nothing is left.</summary>
    public bool Complete => Done == Total;

    /// <summary>Both together.</summary>
    public static Progress operator +(Progress a, Progress b) => new(a.Done + b.Done, a.Total + b.Total);

    /// <summary>The progress of one unit, panel or the house in a phase.</summary>
    /// <param name="subject">The unit, the panel or the house.</param>
    /// <param name="phase">The phase.</param>
    /// <param name="steps">The list of steps; this program's where none is given.</param>
    public static Progress Of(Subject subject, Phase phase, StepList? steps = null)
    {
        var (done, total) = (0, 0);
        foreach (var step in (steps ?? StepList.Shipped).Asked(phase, subject))
        {
            total++;
            if (subject.MarkOf(step) is not null)
                done++;
        }
        return new Progress(done, total);
    }

    /// <summary>The progress of the whole house in a phase: units of windows that get a covering, panels, and the house itself.</summary>
    public static Progress Of(House house, Phase phase, StepList? steps = null) =>
        Walkers(house).Aggregate(default(Progress), (sum, subject) => sum + Of(subject, phase, steps));

    /// <summary>Everything that walks through phases, in walking order: units, then panels, then the house.</summary>
    public static IEnumerable<Subject> Walkers(House house) =>
        [.. house.Units, .. house.Panels, new JobItself(house)];

    /// <summary>The first phase in which something is left to do; null when everything is done.</summary>
    public static Phase? Current(Subject subject, StepList? steps = null) =>
        PhaseNames.All.Where(p => !Of(subject, p, steps).Complete).Select(p => (Phase?)p).FirstOrDefault();

    /// <summary>The next step of a unit, a panel or the house; null when everything is done.</summary>
    public static Step? Next(Subject subject, StepList? steps = null) =>
        PhaseNames.All.SelectMany(p => (steps ?? StepList.Shipped).Asked(p, subject)).FirstOrDefault(s => subject.MarkOf(s) is null);

    /// <summary>The item that holds a fact of evidence: the unit itself, its window or its home run; null where there is no such item yet.</summary>
    public static Item? Holder(Subject subject, Fact fact) => subject switch
    {
        Unit unit when fact.Subject == ItemKind.Window => unit.Window.Item,
        Unit unit when fact.Subject == ItemKind.Run => unit.Run?.Item,
        _ => subject.Item,
    };

    /// <summary>Whether a step lacks no evidence that it asks for.</summary>
    public static bool IsComplete(Subject subject, Step step, StepList? steps = null)
    {
        foreach (var fact in (steps ?? StepList.Shipped).EvidenceOf(step, subject))
        {
            if (Lacks(subject, fact))
                return false;
        }
        return (steps ?? StepList.Shipped).AlsoMissing(step, subject) is null;
    }

    /// <summary>The evidence that a step still lacks of what it asks for, facts by label, in small letters where asked; empty when it has all.</summary>
    public static IReadOnlyList<Arg> Missing(Subject subject, Step step, StepList? steps = null, bool small = false)
    {
        var missing = (steps ?? StepList.Shipped).EvidenceOf(step, subject).Where(f => Lacks(subject, f)).Select(f => Arg.Label(f, small)).ToList();
        if ((steps ?? StepList.Shipped).AlsoMissing(step, subject) is { } more)
            missing.Add(more);
        return missing;
    }

    /// <summary>Whether a fact that a step asks for is missing, or says no more than that it is missing.</summary>
    internal static bool Lacks(Subject subject, Fact fact) =>
        Holder(subject, fact)?.Latest(fact.Name) is not { Stored: not null } head
        || (fact.IsMoreThanNone && head.Value is string text && AbsenceWords.SayNoMore(text));
}
