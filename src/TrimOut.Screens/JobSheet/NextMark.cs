using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>Which step Space marks on the job sheet, said before it does: a mark never runs ahead to a later phase unasked.</summary>
internal static class NextMark
{
    /// <summary>The step that Space marks of a unit: in the phase that is shown, or the next of all.</summary>
    public static Step? Of(JobSheetScreen s, Unit unit, StepList steps) => Of(s.PhaseShown, unit, steps);

    /// <summary>The same by the phase that is shown; null for all of them.</summary>
    public static Step? Of(Phase? shown, Unit unit, StepList steps) =>
        shown is { } phase ? steps.Asked(phase, unit).FirstOrDefault(x => unit.MarkOf(x) is null) : Progress.Next(unit, steps);

    /// <summary>Marks the step of the unit under the cursor, and goes to the next unit.</summary>
    public static Transition One(JobSheetScreen s, ScreenContext context, Func<JobSheetScreen, ScreenContext, JobSheetScreen> goOn)
    {
        var unit = s.Current(context)!;
        if (Of(s, unit, context.Steps) is not { } step)
        {
            return Transition.Say(s, s.PhaseShown is { } phase
                ? $"Every step of {phase.Full()} is done at {unit.Tag}. Left and Right show other phases."
                : $"Every step of {unit.Tag} is done.");
        }
        var mark = Marking.Mark(s, context, unit, step, (screen, after) => new Transition(goOn((JobSheetScreen)screen, after)));
        return s.PhaseShown is null ? AskedBeforeRunningAhead(s, unit, step, mark) : mark;
    }

    /// <summary>The mark, or a question first where it would begin a later phase that nobody chose.</summary>
    public static Transition AskedBeforeRunningAhead(IScreen s, Unit unit, Step step, Transition mark) => RunsAhead(unit, step) is { } done
        ? new Transition(s, new Ask.Confirm($"{unit.Tag}: {done.Full()} is done. y marks \"{step.Label}\" of {step.Phase.Full()}, any other key leaves it.",
            Ask.Confirm.AlsoYes, mark))
        : mark;

    /// <summary>The phase that was worked in, where a mark would begin a later one; null where it would not.</summary>
    public static Phase? RunsAhead(Unit unit, Step step)
    {
        var last = StepList.All.Where(x => x.Subject == ItemKind.Unit && unit.MarkOf(x) is not null).Select(x => (Phase?)x.Phase).Max();
        return last < step.Phase ? last : null;
    }

    /// <summary>Which step on how many units, as it follows "Space marks ".</summary>
    public static string InWords(IEnumerable<(Unit Unit, Step Step)> marks) => string.Join("; ", marks.GroupBy(m => m.Step)
        .OrderBy(g => g.Key.Phase).Select(g => $"{g.Key.Label} ({g.Key.Phase.Full()}) on {NumberText.Plain(g.Count())}"));
}
