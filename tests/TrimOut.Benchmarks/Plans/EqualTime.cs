using System.Diagnostics;
using System.Globalization;
using TrimOut.Core.Plans.Cutting;

namespace TrimOut.Benchmarks.Plans;

/// <summary>Boxes found for the same order: ours, and the outside solver's in no less time.</summary>
internal static class EqualTime
{
    private const double LeastSeconds = 10;

    public static void Print(TextWriter to)
    {
        to.WriteLine();
        to.WriteLine(
            $"Fewest boxes; OR-tools (CP-SAT, 2 workers, begun with first fit decreasing, " +
                $"told the bound by total length) gets {LeastSeconds} s or our time, whichever is more.");
        to.WriteLine("| runs | sort | instance | at least | first fit | TrimOut | proven | ms | OR-tools | proven | ms |");
        to.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|");
        foreach (var (runs, sort, count) in new[]
            { (60, CutInstances.Uniform, 2), (250, CutInstances.House, 1), (250, CutInstances.Uniform, 2), (1000, CutInstances.House, 1),
            (1000, CutInstances.Uniform, 1) })
        {
            var orders = sort == CutInstances.House
                ? Enumerable.Range(1, count).Select(s => CutInstances.Of(sort, runs, s)).ToList()
                : CutInstances.Contested(sort, runs, count);
            for (var i = 0; i < orders.Count; i++)
                to.WriteLine(Row(orders[i], $"| {runs} | {sort} | {i + 1}"));
        }
    }

    private static string Row(CutOrder order, string start)
    {
        var (ours, time) = Timed(() => CutPlanner.Solve(order, CutAim.FewestBoxes).Value);
        var (theirs, theirTime) = Timed(() => CutInstances.Outside(order, Math.Max(LeastSeconds, time.TotalSeconds)));
        return string.Create(CultureInfo.InvariantCulture,
            $"{start} | {ours.Opened.Limit} | {CutInstances.FirstFit(order).Max() + 1} | {ours.Opened.Found} | {YesNo(ours.FewestProven)} | " +
                $"{time.TotalMilliseconds:0.0} | {(theirs is { } t ? t.Boxes : "none")} | {YesNo(theirs?.Proven == true)} | {theirTime.TotalMilliseconds:0} |");
    }

    private static string YesNo(bool yes) => yes ? "yes" : "no";

    private static (T Value, TimeSpan Time) Timed<T>(Func<T> work)
    {
        var watch = Stopwatch.StartNew();
        return (work(), watch.Elapsed);
    }
}
