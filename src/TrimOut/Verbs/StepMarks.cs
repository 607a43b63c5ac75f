using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Verbs;

/// <summary>Marks of steps that come as lines: held to the order of the work as on the screens.</summary>
internal sealed class StepMarks(StepList steps)
{
    private const string Begin = StepMark.FactName + ":";
    private CheckReport? _report;

    /// <summary>The id of the step that a detail's name means; null where it means none.</summary>
    public static string? IdIn(string name) => name.StartsWith(Begin, StringComparison.Ordinal) ? name[Begin.Length..] : null;

    /// <summary>The change that a mark makes, or why the step is not marked.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="id">The step's id.</param>
    /// <param name="value">The mark as it is written; nothing clears it.</param>
    public Result<Draft> Read(Unit? unit, string id, string value)
    {
        if (unit is null)
            return new Refusal($"There is no step {id} here.");
        var here = steps.Steps.Where(s => s.Subject == ItemKind.Unit && steps.Open(s.Phase, unit).Contains(s)).ToList();
        if (here.FirstOrDefault(s => s.Id == id) is not { } step)
            return new Refusal($"{unit.Tag} has no step {id}. It has: {string.Join(", ", here.Select(s => s.Id))}.");
        if (value.Length == 0)
            return MarkStep.Clear(unit, step);
        return StepMark.Read(value).Then(mark =>
        {
            if (mark.NotNeededBecause is { } because)
                return MarkStep.NotNeeded(unit, step, because);
            var reader = new Reader(unit.House);
            if (Progress.Missing(unit, step, steps, small: true) is { Count: > 0 } missing)
                return new Refusal($"{unit.Tag}, {step.Label}: still missing {Arg.All(missing).For(reader)}.");
            _report = _report?.After(unit.House) ?? CheckReport.Of(unit.House, steps);
            var marked = MarkStep.InOrder(unit, step, _report, steps, mark.Although);
            return marked.Ok || mark.Although is not null ? marked
                : new Refusal($"{marked.Reason} If it was done all the same, write \"done although: \" and why.");
        });
    }
}
