using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>What speaks against marking a step now: steps that come first, and open stops.</summary>
public static class StepGuard
{
    private const int MostNames = 6;

    /// <summary>More stops than these are counted, and the worst is told: a question that is cut tells nothing.</summary>
    private const int MostStops = 2;

    /// <summary>A skipped step is mended by marking it, so that stop never speaks against it.</summary>
    private const string Skipped = "step-passed-over";

    /// <summary>What speaks against it, each in a sentence; empty where nothing does.</summary>
    /// <param name="subject">The unit, the panel or the house.</param>
    /// <param name="step">The step that is to be marked.</param>
    /// <param name="report">What the checks say of the house.</param>
    /// <param name="steps">The list of steps that the work is done by.</param>
    public static ImmutableArray<string> Against(Subject subject, Step step, CheckReport report, StepList steps)
    {
        var presupposed = StepOrder.Of(step);
        var open = StepOrder.OpenBefore(step, subject, steps).Select(b => $"\"{b.Before.Label}\" ({b.Before.Phase.Full()}) is not done yet"
            + $"{(b.Before.Subject == subject.Item.Kind ? "" : $": {Names([.. b.Lacking.Select(s => s.Name)])}")}.");
        var ofParts = subject is Unit unit && !presupposed.NoStopOf.IsEmpty ? report.StopsOfParts(unit).Where(f => f.Check.Phase <= step.Phase) : [];
        var stops = Stops(subject, report).Where(f => presupposed.NoStopOf.Contains(f.Check.Phase) || IsOfItsEvidence(f, subject, step)).Concat(ofParts)
            .Select(f => $"STOP{(f.Subject.Id == subject.Id ? "" : $" {report.House.NameOf(f.Subject)}:")} {report.Said(f)}").ToList();
        return
        [
            .. stops.Count <= MostStops ? stops : [$"{NumberText.Plain(stops.Count)} stops are open; the worst: {stops[0]}"],
            .. open, .. presupposed.AllEarlier ? Earlier(subject, step, presupposed, steps) : [],
        ];
    }

    /// <summary>How many steps of earlier phases are not done, besides those that are named, and the first of them; empty where all are.</summary>
    private static ImmutableArray<string> Earlier(Subject subject, Step step, Presupposed presupposed, StepList steps)
    {
        IEnumerable<Subject> doing = subject is JobItself ? Progress.Walkers(subject.House) : [subject];
        var left = PhaseNames.All.Where(p => p < step.Phase)
            .SelectMany(p => doing.SelectMany(s => steps.Asked(p, s).Where(x => s.MarkOf(x) is null && !presupposed.Before.Contains(x.Id)).Select(x => (x, s))))
            .ToList();
        return left is not [var (first, of), ..] ? []
            : [$"{NumberText.Counted(left.Count, "step")} before it {(left.Count == 1 ? "is" : "are")} not done yet, the first: \"{first.Label}\" "
                + $"({first.Phase.Full()}){(of.Id == subject.Id ? "" : $" of {of.Name}")}."];
    }

    private static IEnumerable<Finding> Stops(Subject subject, CheckReport report)
    {
        var about = subject switch
        {
            Unit unit => report.About(unit).Concat(Around(unit).SelectMany(report.About)),
            JobItself => report.Findings,
            _ => report.About(subject.Item),
        };
        return about.Where(f => f is { Open: true, Check.Severity: Severity.Stop } && f.Check.Id != Skipped).Distinct();
    }

    /// <summary>What a unit is powered and moved by.</summary>
    private static IEnumerable<Item> Around(Unit unit) =>
        new[] { unit.Run?.Panel?.Item, unit.Hub?.Item }.OfType<Item>().Concat(unit.Remotes.Select(r => r.Item));

    private static bool IsOfItsEvidence(Finding finding, Subject subject, Step step) => step.Evidence.Any(fact =>
        Progress.Holder(subject, fact) is { } holder && finding.Found.Mends == FieldRef.To(holder, fact));

    private static string Names(List<string> names) => names.Count <= MostNames ? string.Join(", ", names)
        : $"{string.Join(", ", names.Take(MostNames))} and {NumberText.Plain(names.Count - MostNames)} more";
}
