namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>Finds the fewest boxes to buy, then the fewest to open.</summary>
/// <remarks>
/// Where so many boxes do at all, so many of the largest do: a run cut from a box can be cut from a larger one. So only one
/// set of boxes needs to be looked at for each number.
/// </remarks>
internal static class FewestBoxes
{
    /// <summary>The fewest to buy.</summary>
    /// <returns>The number below which it is proven impossible.</returns>
    public static int ToBuy(Workshop shop, WorkBudget budget)
    {
        FirstOffers(shop);
        if (shop.Best is null && shop.Try(Enumerable.Range(0, shop.Rooms.Length), budget.Part(budget.Left / 2)) is not Verdict.Fits and var verdict)
            return verdict == Verdict.Impossible ? shop.New + 1 : 0;
        return Search(shop, budget, 0, shop.Best!.ToBuy,
            count => Enumerable.Range(0, shop.OnHand.Length + count), best => best.ToBuy);
    }

    /// <summary>The fewest to open with as many bought as the best packing has.</summary>
    /// <returns>The number below which it is proven impossible.</returns>
    public static int ToOpen(Workshop shop, WorkBudget budget)
    {
        var bought = shop.Best!.ToBuy;
        return Search(shop, budget, Math.Max(1, bought), shop.Best.Opened,
            count => [.. Enumerable.Range(0, count - bought), .. Enumerable.Range(shop.OnHand.Length, bought)], best => best.Opened);
    }

    private static int Search(Workshop shop, WorkBudget budget, int from, int known, Func<int, IEnumerable<int>> boxes, Func<Packing, int> figure)
    {
        var (proven, high, provenSoFar) = (from, known, true);
        while (proven < high)
        {
            var middle = (proven + high) / 2;
            (proven, high) = shop.CantDo(boxes(middle)) ? (middle + 1, high) : (proven, middle);
        }
        for (var count = proven; count < known; count++)
        {
            var verdict = shop.Try(boxes(count), budget.Part(budget.Left / 2));
            if (verdict == Verdict.Fits)
                break;
            provenSoFar &= verdict == Verdict.Impossible;
            if (provenSoFar)
                proven = count + 1;
        }
        return Math.Min(proven, figure(shop.Best!));
    }

    private static void FirstOffers(Workshop shop)
    {
        var byRoom = Enumerable.Range(0, shop.Rooms.Length).OrderByDescending(b => shop.Rooms[b]).ToArray();
        foreach (var order in new[] { Enumerable.Range(0, shop.Rooms.Length).ToArray(), byRoom })
        {
            if (FirstFit.Pack(shop.Pieces, order.Select(b => shop.Rooms[b]).ToArray()) is { } boxOf)
                shop.Offer(boxOf.Select(b => order[b]));
        }
    }
}
