namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>Rounds fractional packings to whole ones: takes over the patterns that are nearly whole, then looks at what is left.</summary>
/// <param name="pieces">The pieces.</param>
/// <param name="boxes">Room in each box, largest first.</param>
/// <param name="budget">What it may take.</param>
internal sealed class Dive(PieceSet pieces, long[] boxes, WorkBudget budget)
{
    private const int FewEnough = 28;

    private readonly long[] _kinds = [.. boxes.Distinct()];
    private readonly List<Pattern> _pool = [];

    /// <summary>Searches.</summary>
    /// <param name="tries">How many ways of rounding are tried.</param>
    /// <param name="boxOf">The box of each piece, when they fit.</param>
    public Verdict Search(int tries, out int[]? boxOf)
    {
        boxOf = null;
        Seed();
        for (var attempt = 0; attempt < tries && !budget.Spent; attempt++)
        {
            var verdict = Try(attempt, out boxOf);
            if (verdict == Verdict.Fits || (verdict == Verdict.Impossible && attempt == 0))
                return verdict;
        }
        return Verdict.Unknown;
    }

    /// <summary>The patterns that best fit makes when there are boxes enough: something to begin with.</summary>
    private void Seed()
    {
        var sizes = pieces.Sizes.Distinct().ToArray();
        var row = sizes.Select((s, at) => (s, at)).ToDictionary(p => p.s, p => p.at);
        for (var kind = 0; kind < _kinds.Length; kind++)
        {
            var fitting = pieces.Sizes.Select((s, i) => (s, i)).Where(p => p.s <= _kinds[kind]).Select(p => p.i).ToArray();
            var some = pieces.Only(fitting);
            if (FirstFit.Pack(some, Enumerable.Repeat(_kinds[kind], fitting.Length).ToArray()) is not { } boxOf)
                continue;
            foreach (var box in Enumerable.Range(0, fitting.Length).GroupBy(i => boxOf[i]))
            {
                var amounts = box.CountBy(i => row[some.Sizes[i]]).OrderBy(p => p.Key).ToArray();
                _pool.Add(new(kind, [.. amounts.Select(a => a.Key)], [.. amounts.Select(a => a.Value)]));
            }
        }
    }

    private Verdict Try(int attempt, out int[]? boxOf)
    {
        var state = new Rest(pieces, boxes, _kinds);
        boxOf = null;
        for (var depth = 0; !budget.Spent; depth++)
        {
            if (state.Left <= FewEnough && depth > 0)
                return state.Finish(budget, out boxOf);
            var rows = Enumerable.Range(0, state.Sizes.Length).Where(i => state.Demand[i] > 0).ToArray();
            var newRow = new int[state.Sizes.Length];
            Array.Fill(newRow, -1);
            for (var i = 0; i < rows.Length; i++)
                newRow[rows[i]] = i;
            var pool = _pool.Select(p => Within(p, newRow, rows, state)).OfType<Pattern>().DistinctBy(Name).ToList();
            var begun = pool.Count;
            var lp = new PatternLp([.. rows.Select(i => state.Sizes[i])], [.. rows.Select(i => state.Demand[i])], _kinds, state.Boxes, pool, budget);
            var verdict = lp.Solve();
            _pool.AddRange(pool.Skip(begun).Select(p => p with { Rows = [.. p.Rows.Select(r => rows[r])] }));
            if (verdict != Verdict.Fits)
                return depth == 0 ? verdict : state.Left <= 3 * FewEnough ? state.Finish(budget, out boxOf) : Verdict.Unknown;
            var found = lp.Solution.OrderByDescending(s => s.Amount).Select(s => (s.Pattern with { Rows = [.. s.Pattern.Rows.Select(r => rows[r])] }, s.Amount))
                .ToList();
            if (!TakeWhole(state, found))
                TakeOne(state, found, attempt, depth);
            if (state.Left == 0)
                return state.Finish(budget, out boxOf);
        }
        return Verdict.Unknown;
    }

    private static bool TakeWhole(Rest state, List<(Pattern Pattern, double Amount)> found)
    {
        var any = false;
        foreach (var (pattern, amount) in found)
        {
            for (var n = (int)Math.Floor(amount + 1e-6); n > 0; n--)
                any |= state.Take(pattern);
        }
        return any;
    }

    private static void TakeOne(Rest state, List<(Pattern Pattern, double Amount)> found, int attempt, int depth)
    {
        // Every further attempt goes another way at some depth.
        var pick = attempt > 0 && depth % (attempt + 1) == attempt % 3 ? Math.Min(1 + attempt % 4, found.Count - 1) : 0;
        if (!state.Take(found[pick].Pattern))
            state.Take(found[0].Pattern);
    }

    private static Pattern? Within(Pattern pattern, int[] newRow, int[] rows, Rest state)
    {
        if (state.Boxes[pattern.Kind] == 0)
            return null;
        var kept = Enumerable.Range(0, pattern.Rows.Length).Where(i => newRow[pattern.Rows[i]] >= 0).ToArray();
        return kept.Length == 0 ? null : new(pattern.Kind,
            [.. kept.Select(i => newRow[pattern.Rows[i]])],
            [.. kept.Select(i => Math.Min(pattern.Amounts[i], state.Demand[rows[newRow[pattern.Rows[i]]]]))]);
    }

    private static string Name(Pattern pattern) => $"{pattern.Kind}:{string.Join(',', pattern.Rows)}:{string.Join(',', pattern.Amounts)}";
}
