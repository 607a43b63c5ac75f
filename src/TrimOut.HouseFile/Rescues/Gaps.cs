using System.Globalization;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Says which numbers are missing. It goes from one change that is there to the next, never through the numbers: these may come from a damaged
/// file.</summary>
internal static class Gaps
{
    /// <summary>A line for each gap between changes, and for what is missing after the last.</summary>
    /// <param name="read">The changes that are there, by number.</param>
    /// <param name="expected">How many there should be.</param>
    public static IEnumerable<string> Of(SortedDictionary<long, Change> read, long expected)
    {
        var (before, last) = ((Change?)null, 0L);
        foreach (var (number, change) in read)
        {
            if (number > last + 1)
                yield return Line(last + 1, number - 1, before, change);
            (before, last) = (change, number);
        }
        if (expected > last)
            yield return Line(last + 1, expected, before, null);
    }

    /// <summary>A line for each row of changes that are there without being tied to the others.</summary>
    public static IEnumerable<string> Uncertain(IEnumerable<long> numbers)
    {
        var all = numbers.Order().ToList();
        for (var at = 0; at < all.Count;)
        {
            var from = at;
            do
                at++;
            while (at < all.Count && all[at] == all[at - 1] + 1);
            yield return $"{Which(all[from], all[at - 1])} was brought out, and what ties it to the others is lost: look whether it is right.";
        }
    }

    private static string Line(long from, long to, Change? before, Change? behind) => Which(from, to)
        + (before is null ? "" : $", after {Said(before)}") + (behind is null ? "" : $", before {Said(behind)}");

    private static string Which(long from, long to) => from == to
        ? string.Create(CultureInfo.InvariantCulture, $"Change {from}")
        : string.Create(CultureInfo.InvariantCulture, $"Changes {from} to {to}");

    private static string Said(Change change) => string.Create(CultureInfo.InvariantCulture,
        $"\"{change.What}\" by {change.By} on {change.SaidAt:yyyy-MM-dd HH:mm}");
}
