using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Decisions;

/// <summary>Marks steps of units, panels and the house.</summary>
public static class MarkStep
{
    /// <summary>Says that a step was done, whatever speaks against it: whoever asks people uses <see cref="InOrder"/>.</summary>
    public static Result<Draft> Done(Subject subject, Step step) => Mark(subject, step, StepMark.Done, $"{subject.Name}: {step.Label}");

    /// <summary>Says that a step was done; refused where something speaks against it and nobody says why it was done all the same.</summary>
    /// <param name="subject">The unit, the panel or the house.</param>
    /// <param name="step">The step.</param>
    /// <param name="report">What the checks say of the house.</param>
    /// <param name="steps">The list of steps that the work is done by.</param>
    /// <param name="although">Why it was done all the same; kept with the mark where something speaks against it.</param>
    public static Result<Draft> InOrder(Subject subject, Step step, CheckReport report, StepList steps, string? although = null) =>
        step.Subject != subject.Item.Kind || StepGuard.Against(subject, step, report, steps) is not { IsEmpty: false } against ? Done(subject, step)
        : StepMark.Read($"done although: {although?.Trim()}") is { Ok: true } mark
        ? Mark(subject, step, mark.Value, $"{subject.Name}: {step.Label}, although {string.Join(" ", against)} Reason: {although!.Trim()}")
        : new Refusal($"{subject.Name}, {step.Label}: {string.Join(" ", against)}");

    /// <summary>Says that a step is not needed, and why.</summary>
    public static Result<Draft> NotNeeded(Subject subject, Step step, string because) => StepMark.Read($"not needed: {because.Trim()}") is { Ok: true } mark
        ? Mark(subject, step, mark.Value, $"{subject.Name}: {step.Label}: not needed, {because.Trim()}")
        : new Refusal("Say why it is not needed.");

    /// <summary>Takes back what was said of a step.</summary>
    public static Result<Draft> Clear(Subject subject, Step step) => subject.MarkOf(step) is null
        ? new Refusal($"\"{step.Label}\" is not marked.")
        : new Draft($"{subject.Name}: {step.Label}: mark cleared").PutStored(subject.Id, UnitFacts.Step.Field(step.Id), null);

    private static Result<Draft> Mark(Subject subject, Step step, StepMark mark, string what) =>
        step.Subject != subject.Item.Kind ? new Refusal($"\"{step.Label}\" is no step of this item.")
        : subject.MarkOf(step) == mark ? new Refusal($"\"{step.Label}\" is marked already.")
        : new Draft(what).PutStored(subject.Id, UnitFacts.Step.Field(step.Id), mark.ToString());
}
