namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>With the boxes settled, packs so that one of them keeps as long a piece as can be.</summary>
internal static class LongestLeftover
{
    private const int MostTries = 24;

    /// <summary>Searches.</summary>
    /// <returns>The length, nm, above which it is proven impossible.</returns>
    public static long Search(Workshop shop, WorkBudget budget)
    {
        var boxes = shop.Best!.BoxOf.Distinct().Order().ToArray();
        var room = boxes.Sum(b => shop.Rooms[b]);
        var limit = 0L;
        foreach (var box in boxes.DistinctBy(b => shop.Lengths[b]).OrderByDescending(b => shop.LeftOf(b, Least(shop, room, b))).ToArray())
        {
            var provenLeast = Shorten(shop, boxes, box, Least(shop, room, box), budget.Part(budget.Left / 2));
            limit = Math.Max(limit, shop.LeftOf(box, provenLeast));
        }
        return Math.Max(limit, shop.Best!.LongestLeft);
    }

    /// <summary>What must be in a box at the least: a run, and what finds no room in all the others.</summary>
    private static long Least(Workshop shop, long room, int box) =>
        Math.Max(shop.Pieces.Sizes[^1], shop.Pieces.Total - (room - shop.Rooms[box]));

    private static long Shorten(Workshop shop, int[] boxes, int box, long least, WorkBudget budget)
    {
        var (low, proven) = (least, least);
        for (var tries = 0; tries < MostTries; tries++)
        {
            var high = shop.ContentThatLeavesOver(box, shop.Best!.LongestLeft);
            if (low > high)
                break;
            var content = tries == 0 ? low : low + (high - low) / 2;
            var verdict = shop.Try(boxes, budget.Part(budget.Left / 6), (box, content));
            if (verdict == Verdict.Fits)
                continue;
            if (verdict == Verdict.Impossible)
                proven = content + 1;
            low = content + 1;
        }
        return proven;
    }
}
