namespace TrimOut.Core.Plans.Outputs;

/// <summary>Panels to use and how many runs each may get: as few panels as can be, loaded as alike as can be.</summary>
/// <param name="Panels">Numbers of the panels.</param>
/// <param name="Least">The fewest runs on each.</param>
/// <param name="Most">The most on each.</param>
internal sealed record PanelChoice(int[] Panels, int[] Least, int[] Most)
{
    private const int MostSets = 1_000;

    /// <summary>Every choice worth looking at, panels that are alike counted once.</summary>
    /// <param name="order">An order that makes sense.</param>
    /// <param name="spread">By how much the fullest panel differs from the emptiest in all of them.</param>
    /// <param name="whole">Whether there were few enough sets of panels to look at all.</param>
    public static List<PanelChoice> All(OutputOrder order, out int spread, out bool whole)
    {
        var stays = order.Panels.Select(p => order.MayMove ? 0 : order.Runs.Count(r => r.Landed?.Panel == p.Id)).ToArray();
        var holds = order.Panels.Select((p, i) => stays[i] + OutputOrderCheck.FreeOutputs(order, p)).ToArray();
        // A panel that runs were landed on is like no other: moving them counts.
        var own = order.Panels.Select(p => order.Runs.Any(r => r.Landed?.Panel == p.Id)).ToArray();
        var musts = Enumerable.Range(0, holds.Length).Where(i => stays[i] > 0).ToArray();
        var others = Enumerable.Range(0, holds.Length).Where(i => stays[i] == 0).OrderByDescending(i => holds[i]).ThenBy(i => own[i] ? 0 : 1).ThenBy(i => i)
            .ToArray();
        var (more, room) = (0, musts.Sum(i => holds[i]));
        while (room < order.Runs.Length)
            room += holds[others[more++]];
        var best = new List<PanelChoice>();
        spread = int.MaxValue;
        var looked = 0;
        whole = true;
        foreach (var set in Sets(others, more, (a, b) => holds[a] == holds[b] && !own[a] && !own[b]))
        {
            whole = ++looked <= MostSets;
            if (!whole)
                break;
            var panels = musts.Concat(set).Order().ToArray();
            if (panels.Sum(p => holds[p]) < order.Runs.Length)
                continue;
            foreach (var (least, by) in Levels([.. panels.Select(p => stays[p])], [.. panels.Select(p => holds[p])], order.Runs.Length))
            {
                if (by > spread)
                    continue;
                if (by < spread)
                    best.Clear();
                spread = by;
                best.Add(new(panels, [.. panels.Select(p => Math.Max(stays[p], least))], [.. panels.Select(p => Math.Min(holds[p], least + by))]));
            }
        }
        return best;
    }

    /// <summary>The least spread and every lowest level at which it can be had.</summary>
    private static IEnumerable<(int Least, int Spread)> Levels(int[] stays, int[] holds, int runs)
    {
        for (var spread = 0; ; spread++)
        {
            var levels = Enumerable.Range(0, runs + 1).Where(least =>
                Enumerable.Range(0, stays.Length).All(i => stays[i] <= least + spread && holds[i] >= least) &&
                Enumerable.Range(0, stays.Length).Sum(i => Math.Max(stays[i], least)) <= runs &&
                Enumerable.Range(0, stays.Length).Sum(i => Math.Min(holds[i], least + spread)) >= runs).ToList();
            if (levels.Count > 0)
                return levels.Select(l => (l, spread));
        }
    }

    private static IEnumerable<int[]> Sets(int[] from, int count, Func<int, int, bool> alike, int at = 0)
    {
        if (count == 0)
        {
            yield return [];
            yield break;
        }
        for (var i = at; i <= from.Length - count; i++)
        {
            // Of panels that are alike the first ones are taken.
            if (i > at && alike(from[i], from[i - 1]))
                continue;
            foreach (var rest in Sets(from, count - 1, alike, i + 1))
                yield return [from[i], .. rest];
        }
    }
}
