namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>With the number of boxes settled, opens those that hold least: part boxes get used up and full ones stay shut.</summary>
internal static class LeastOpened
{
    private const int MostSets = 4_000;

    /// <summary>Searches.</summary>
    /// <returns>The length, nm, below which it is proven impossible.</returns>
    public static long Search(Workshop shop, WorkBudget budget)
    {
        var best = shop.Best!;
        var bought = Enumerable.Range(shop.OnHand.Length, best.ToBuy).ToArray();
        var boughtLength = bought.Sum(b => shop.Lengths[b]);
        var sets = new List<(long Length, int[] Boxes)>();
        var all = Gather(shop, best.Opened - best.ToBuy, best.OpenedLength - boughtLength, sets);
        var proven = all;
        var limit = all ? best.OpenedLength : boughtLength;
        foreach (var (length, boxes) in sets.OrderBy(s => s.Length))
        {
            var chosen = boxes.Concat(bought);
            var verdict = shop.CantDo(chosen) ? Verdict.Impossible : shop.Try(chosen, budget.Part(budget.Left / 6));
            if (verdict == Verdict.Impossible)
                continue;
            if (proven)
                (limit, proven) = (length + boughtLength, false);
            if (verdict == Verdict.Fits)
                break;
        }
        return Math.Min(limit, shop.Best!.OpenedLength);
    }

    /// <summary>Every choice of so many boxes on hand that is shorter than the one there is, equal boxes counted once.</summary>
    /// <returns>Whether all were gathered.</returns>
    private static bool Gather(Workshop shop, int count, long below, List<(long, int[])> sets)
    {
        var lengths = shop.Lengths.AsSpan(0, shop.OnHand.Length).ToArray();
        var taken = new List<int>();
        var looked = 0;

        bool From(int at, long sum)
        {
            if (++looked > 20 * MostSets || sets.Count >= MostSets)
                return false;
            var missing = count - taken.Count;
            if (missing == 0)
            {
                if (sum < below && !shop.CantDo(taken.Concat(Enumerable.Range(shop.OnHand.Length, shop.Best!.ToBuy))))
                    sets.Add((sum, [.. taken]));
                return true;
            }
            if (lengths.Length - at < missing || sum + lengths.AsSpan(lengths.Length - missing).ToArray().Sum() >= below)
                return true;
            taken.Add(at);
            var whole = From(at + 1, sum + lengths[at]);
            taken.RemoveAt(taken.Count - 1);
            var next = at + 1;
            while (next < lengths.Length && lengths[next] == lengths[at])
                next++;
            return whole && From(next, sum);
        }

        return From(0, 0);
    }
}
