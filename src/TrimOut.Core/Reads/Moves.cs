namespace TrimOut.Core.Reads;

/// <summary>How the places of a list's entries change when others come between them, go, or change the order.</summary>
internal static class Moves
{
    /// <summary>Where each entry of a list was in another, and where each of the other's went; negative where there is none.</summary>
    /// <param name="before">The list as it was; no entry is there twice.</param>
    /// <param name="after">The list as it is.</param>
    public static (int[] From, int[] To) Between(string[] before, string[] after)
    {
        var (from, to) = (new int[after.Length], new int[before.Length]);
        var shorter = Math.Min(before.Length, after.Length);
        var begin = 0;
        for (; begin < shorter && before[begin] == after[begin]; begin++)
            from[begin] = to[begin] = begin;
        var end = 0;
        for (; end < shorter - begin && before[^(end + 1)] == after[^(end + 1)]; end++)
            (from[^(end + 1)], to[^(end + 1)]) = (before.Length - 1 - end, after.Length - 1 - end);
        var between = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var at = begin; at < before.Length - end; at++)
        {
            between.Add(before[at], at);
            to[at] = -1;
        }
        for (var at = begin; at < after.Length - end; at++)
        {
            from[at] = between.GetValueOrDefault(after[at], -1);
            if (from[at] >= 0)
                to[from[at]] = at;
        }
        return (from, to);
    }
}
