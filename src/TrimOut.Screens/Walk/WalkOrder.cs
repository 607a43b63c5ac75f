using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Walk;

/// <summary>Who walks through a phase, and in which order.</summary>
internal static class WalkOrder
{
    /// <summary>Units in walking order, then the house; panels before them, since nothing is landed before its panel is there.</summary>
    public static IReadOnlyList<Subject> Subjects(ScreenContext context, Phase phase) =>
        [.. Progress.Walkers(context.House).Where(s => context.Steps.Open(phase, s).Any()).OrderBy(s => s is Panel ? 0 : 1)];

    public static Step? FirstOpen(ScreenContext context, Subject subject, Phase phase) =>
        FirstAsked(context, subject, phase) ?? context.Steps.Open(phase, subject).FirstOrDefault();

    /// <summary>After a step: the next open step of the same subject, else the first open step of the next subject that has one.</summary>
    public static (string? Subject, string? Step) After(ScreenContext context, Phase phase, IReadOnlyList<Subject> subjects,
        string? subjectId)
    {
        var at = Math.Max(0, subjects.ToList().FindIndex(s => s.Id == subjectId));
        for (var by = 0; by < subjects.Count; by++)
        {
            var subject = subjects[(at + by) % subjects.Count];
            if (FirstAsked(context, subject, phase) is { } open)
                return (subject.Id, open.Id);
        }
        return (subjectId, null);
    }

    /// <summary>The next subject that has the same step still open; where there is none, the place stays.</summary>
    public static (string? Subject, string? Step) SameStep(ScreenContext context, Phase phase, IReadOnlyList<Subject> subjects,
        string? subjectId, string stepId)
    {
        var at = Math.Max(0, subjects.ToList().FindIndex(s => s.Id == subjectId));
        for (var by = 1; by < subjects.Count; by++)
        {
            var subject = subjects[(at + by) % subjects.Count];
            if (context.Steps.Asked(phase, subject).Any(s => s.Id == stepId && subject.MarkOf(s) is null))
                return (subject.Id, stepId);
        }
        return (subjectId, stepId);
    }

    private static Step? FirstAsked(ScreenContext context, Subject subject, Phase phase) =>
        context.Steps.Asked(phase, subject).FirstOrDefault(s => subject.MarkOf(s) is null);
}
