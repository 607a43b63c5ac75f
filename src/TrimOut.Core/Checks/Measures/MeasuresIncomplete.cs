using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>A window was measured completely before the job goes on with it.</summary>
/// <remarks>
/// <para>Why: the figure that was left out is the one that is smaller.</para>
/// <para>To clear: three widths, three heights, both diagonals, and the depth for an inside mount.</para>
/// </remarks>
public sealed class MeasuresIncomplete : WindowCheck
{
    private static readonly Message NoneYet = new("finished measures");
    private static readonly Message NotYet = new("Not measured yet: {0}.", "not-ordered");
    private static readonly Message OrderedAndNotYet = new("An order size is written, and not measured yet: {0}.", "ordered");
    private static readonly Message MeasureRest = new("Measure what is left before anything is ordered.");

    private static readonly Message MeasureForRecord = new("It hangs: measure what can still be reached, and waive the rest.");

    private static readonly Fact<Length>[] Always =
    [
        WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight,
        WindowFacts.DiagonalDown, WindowFacts.DiagonalUp,
    ];

    private static readonly Fact<Length>[] Inside = [.. Always, WindowFacts.Depth];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("measures-incomplete", "Not fully measured", Severity.Stop, Phase.Measure,
        new Source(Source.CommonPractice, "all of them, once it is said to be measured, another window was measured after it, or an order size is written"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        var asked = subject.Mount == Mount.Outside ? Always : Inside;
        var missing = asked.Where(f => subject.Item.Get(f) is null).ToList();
        if (missing.Count == 0)
            return new Outcome.Fine();
        var ordered = subject.Units.Any(u => u.Item.Get(UnitFacts.OrderWidth) is not null || u.Item.Get(UnitFacts.OrderHeight) is not null);
        return missing.Count == asked.Length && !ordered
            ? new Outcome.NotChecked(NoneYet, FieldRef.To(subject.Item, missing[0]))
            // Who is at the third of nine figures has forgotten none.
            : !ordered && !subject.Units.Any(IsSaidToBeMeasured) && !WentOn(subject)
            ? new Outcome.NotChecked(NotChecked.Alone.With(Arg.All(missing.Select(f => Arg.Label(f)), "; ")), FieldRef.To(subject.Item, missing[0]))
            : new Outcome.Found((ordered ? OrderedAndNotYet : NotYet).With(Arg.All(missing.Select(f => Arg.Label(f)), "; ")),
                subject.Units.Any(Moment.Hangs) ? MeasureForRecord : MeasureRest,
                FieldRef.To(subject.Item, missing[0]));
    }

    /// <summary>The finished measure of a window that was written last; null before the first.</summary>
    internal static Head? LastOf(Window window) =>
        Inside.Select(f => window.Item.Latest(f)).OfType<Head>().Where(h => h.Stored is not null)
            .Aggregate((Head?)null, (a, b) => a is null || b.IsAfter(a) ? b : a);

    /// <summary>Whether a measure of another window was written after the last one of this.</summary>
    private static bool WentOn(Window window)
    {
        var last = Inside.Select(f => window.Item.Latest(f)).OfType<Head>().Aggregate((a, b) => b.IsAfter(a) ? b : a);
        return window.House.Look(Lookups.LastMeasures, "")
            .Any(m => m.Window != window.Id && Change.Order(m.Stamp, m.Id, last.Stamp, last.Id) > 0);
    }

    /// <summary>Whether the step is marked, or one that is done after it.</summary>
    private static bool IsSaidToBeMeasured(Unit unit) => Moment.Begun(unit, Phase.Order)
        || MeasureSteps.All.SkipWhile(s => s.Id != "measured").Any(s => s.Subject == ItemKind.Unit && unit.MarkOf(s) is not null);
}
