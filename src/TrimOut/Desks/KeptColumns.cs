using TrimOut.Screens.Schedules;

namespace TrimOut.Desks;

/// <summary>Columns that were chosen for schedules before, found again by the headers of those.</summary>
internal static class KeptColumns
{
    /// <summary>What is said where they are those of another schedule with nearly the same headers.</summary>
    public static readonly ScheduleLine Nearly = new("as before",
        "a schedule with nearly these headers was read with columns that you chose, and so is this one. Look at the columns");

    /// <summary>The headers of a schedule in one word.</summary>
    public static string Key(IEnumerable<string> headers) => string.Join('\n', headers.Distinct().Order(StringComparer.Ordinal));

    /// <summary>What was chosen for a schedule of these headers, else for the one that shares the most of them: more than half of both.</summary>
    /// <param name="kept">What is kept.</param>
    /// <param name="headers">The headers.</param>
    /// <returns>The columns, field to header, and whether the headers are the same; null where none is near.</returns>
    public static (IReadOnlyDictionary<string, string> Columns, bool Same)? For(
        IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> kept, string headers)
    {
        if (kept.TryGetValue(headers, out var same))
            return (same, true);
        var mine = headers.Split('\n');
        var near = kept.Select(k => (k.Value, Theirs: k.Key.Split('\n')))
            .Select(k => (k.Value, Shared: 2 * k.Theirs.Intersect(mine, StringComparer.Ordinal).Count(), Most: Math.Max(k.Theirs.Length, mine.Length)))
            .Where(k => k.Shared > k.Most).OrderByDescending(k => k.Shared).ToList();
        return near.Count > 0 ? (near[0].Value, false) : null;
    }
}
