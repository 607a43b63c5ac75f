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

    /// <summary>A line for each row of changes that came from other copies.</summary>
    public static IEnumerable<string> Filled(IReadOnlyList<long> numbers, string into) =>
        Rows(numbers).Select(r => $"From the other copies, because {into} does not have it any more: {Which(r.From, r.To).ToLowerInvariant()}.");

    /// <summary>A line for each row of changes that are there without being tied to the others.</summary>
    public static IEnumerable<string> Uncertain(IEnumerable<long> numbers)
    {
        foreach (var (from, to) in Rows([.. numbers.Order()]))
            yield return $"{Which(from, to)} {(from == to ? "was" : "were")} brought out, and what ties it to the others is lost: look whether it is right.";
    }

    /// <summary>A line for each row of changes of a journal that the file itself, without its last page, can't be asked about.</summary>
    public static IEnumerable<string> OfWhoseJournal(IEnumerable<long> numbers, string journal) => Rows([.. numbers.Order()]).Select(r =>
        $"{Which(r.From, r.To)} came from {journal}, and only the file's last page could tell whether that is this copy's or another one's, or even another "
        + "house's: look whether it is right.");

    private static IEnumerable<(long From, long To)> Rows(IReadOnlyList<long> numbers)
    {
        for (var at = 0; at < numbers.Count;)
        {
            var from = at;
            do
                at++;
            while (at < numbers.Count && numbers[at] == numbers[at - 1] + 1);
            yield return (numbers[from], numbers[at - 1]);
        }
    }

    private static string Line(long from, long to, Change? before, Change? behind) => Which(from, to)
        + (before is null ? "" : $", after {Said(before)}") + (behind is null ? "" : $", before {Said(behind)}")
        + $"{(before is null && behind is null ? "" : ",")} {(from == to ? "is" : "are")} lost.";

    private static string Which(long from, long to) => from == to
        ? string.Create(CultureInfo.InvariantCulture, $"Change {from}")
        : string.Create(CultureInfo.InvariantCulture, $"Changes {from} to {to}");

    private static string Said(Change change) => string.Create(CultureInfo.InvariantCulture,
        $"\"{change.What}\" by {change.By} on {change.SaidAt:yyyy-MM-dd HH:mm}");
}
