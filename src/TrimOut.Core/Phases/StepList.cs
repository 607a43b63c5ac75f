using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>Every step of every phase, in the order in which it is done, as one version of TrimOut lists them.</summary>
/// <remarks>
/// A step or a piece of evidence that a later version adds is asked of every unit whose phase is still open. Where the phase was
/// complete before, it is offered: it can be marked, and nobody waits for it. <see cref="HeldTo"/> says how that is known.
/// </remarks>
public sealed class StepList
{
    private readonly ILookup<(Phase, ItemKind), Step> _byPhase;
    private readonly ImmutableHashSet<(Phase, ItemKind)> _grew;

    /// <summary>A list of these steps.</summary>
    public StepList(IEnumerable<Step> steps)
    {
        Steps = [.. steps];
        Version = Steps.SelectMany(s => s.Versions).DefaultIfEmpty(1).Max();
        _byPhase = Steps.ToLookup(s => (s.Phase, s.Subject));
        _grew = [.. Steps.Where(s => s.Versions.Any(v => v > 1)).Select(s => (s.Phase, s.Subject))];
    }

    /// <summary>The list of this program.</summary>
    public static StepList Shipped { get; } = new(
    [
        .. WalkThroughSteps.All, .. RoughInSteps.All, .. CloseInSteps.All, .. MeasureSteps.All, .. OrderSteps.All, .. ReceiveSteps.All,
        .. HangSteps.All, .. PowerSteps.All, .. PairSteps.All, .. LimitsSteps.All, .. HandoverSteps.All,
    ]);

    /// <summary>All steps of this program.</summary>
    public static ImmutableArray<Step> All => Shipped.Steps;

    /// <summary>The steps.</summary>
    public ImmutableArray<Step> Steps { get; }

    /// <summary>The version of the list: that of its newest step or piece of evidence.</summary>
    public int Version { get; }

    /// <summary>The steps of one phase that this program asks of a unit, a panel or the house.</summary>
    public static IEnumerable<Step> Of(Phase phase, Subject subject) => Shipped.Asked(phase, subject);

    /// <summary>The step of this program with that id; null when there is none.</summary>
    public static Step? Find(string id) => Shipped.Steps.FirstOrDefault(s => s.Id == id);

    /// <summary>The steps of one phase that a unit, a panel or the house can walk through: what is asked of it and what is offered.</summary>
    public IEnumerable<Step> Open(Phase phase, Subject subject) =>
        _byPhase[(phase, subject.Item.Kind)].Where(s => subject is not Unit unit || s.Applies(unit));

    /// <summary>The steps of one phase that are asked of a unit, a panel or the house; one that was only offered counts once it is marked.</summary>
    public IEnumerable<Step> Asked(Phase phase, Subject subject)
    {
        var held = HeldTo(phase, subject);
        return held == Version ? Open(phase, subject) : Open(phase, subject).Where(s => s.SinceFor(subject) <= held || IsUsed(subject, s));
    }

    /// <summary>Whether a step is asked of a unit, a panel or the house, not only offered.</summary>
    public bool IsAsked(Step step, Subject subject) => step.SinceFor(subject) <= HeldTo(step.Phase, subject) || IsUsed(subject, step);

    /// <summary>The evidence that a step asks of a unit, a panel or the house. What came with the step always goes with it.</summary>
    public IEnumerable<Fact> EvidenceOf(Step step, Subject subject)
    {
        var held = Math.Max(step.Since, HeldTo(step.Phase, subject));
        return held == Version && step.OnlyWhere.IsEmpty ? step.Evidence : step.Evidence.Where(f => step.SinceOf(f) <= held && step.Wants(f, subject));
    }

    /// <summary>Whether a step asks a fact of its evidence of a unit, a panel or the house.</summary>
    public bool Asks(Step step, Subject subject, Fact fact) => step.Evidence.Contains(fact) && step.Wants(fact, subject)
        && step.SinceOf(fact) <= Math.Max(step.Since, HeldTo(step.Phase, subject));

    /// <summary>What is missing of the evidence that is no single fact, as far as it is asked; null when nothing is.</summary>
    public Sentence? AlsoMissing(Step step, Subject subject)
    {
        var held = Math.Max(step.Since, HeldTo(step.Phase, subject));
        return (step.AlsoSince <= held ? step.AlsoMissing(subject) : null) ?? (step.LaterMissingSince <= held ? step.LaterMissing(subject) : null);
    }

    /// <summary>The version of the list that a phase of a unit, a panel or the house is held to.</summary>
    /// <remarks>
    /// Whoever adds an item notes the version of the list beside it, and so does whoever marks a step of a phase that is still open
    /// (<see cref="StepVersion"/>). A phase that is complete by the version noted last was complete before any later one came, and is
    /// held to it; an open one is held to this program's. A phase that asked nothing goes by the next one that did. What is only asked again because something
    /// was replaced opens no phase: nothing else is asked with it.
    /// </remarks>
    public int HeldTo(Phase phase, Subject subject)
    {
        if (Version == 1 || !_grew.Contains((phase, subject.Item.Kind)))
            return Version;
        var noted = StepVersion.NotedAt(subject, phase);
        return noted < Version && WasComplete(phase, subject) ? noted : Version;
    }

    /// <summary>Whether a step is marked, or was and is asked again.</summary>
    private static bool IsUsed(Subject subject, Step step) => subject.MarkOf(step) is not null || AskedAgain.Since(subject, step) is not null;

    private bool WasComplete(Phase phase, Subject subject)
    {
        var from = PhaseNames.All.Skip((int)phase).Concat(PhaseNames.All.Take((int)phase).Reverse());
        foreach (var at in from)
        {
            var asked = Open(at, subject).Where(s => s.SinceFor(subject) <= StepVersion.NotedAt(subject, at)).ToList();
            if (asked.Count > 0)
                return asked.All(s => IsUsed(subject, s));
        }
        return false;
    }
}
