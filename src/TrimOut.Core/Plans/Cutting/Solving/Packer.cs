namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>Whether pieces fit into given boxes: quick ways first, then exact ones.</summary>
internal static class Packer
{
    private const int MostRows = 1_500;

    /// <summary>Tries to pack.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="boxes">Room in each box, largest first.</param>
    /// <param name="budget">What it may take.</param>
    /// <param name="boxOf">The box of each piece, when they fit.</param>
    public static Verdict Try(PieceSet pieces, long[] boxes, WorkBudget budget, out int[]? boxOf)
    {
        boxOf = null;
        if (CantFit(pieces, boxes))
            return Verdict.Impossible;
        boxOf = FirstFit.Pack(pieces, boxes) ?? FirstFit.Pack(pieces, boxes, best: true);
        if (boxOf is not null)
            return Verdict.Fits;
        var quick = budget.Part(20_000 + 400L * pieces.Count);
        var verdict = new Completion(pieces, boxes, quick, 1, 2_000).Search(out boxOf);
        if (verdict != Verdict.Unknown)
            return verdict;
        if (pieces.Count <= 80)
            verdict = new Completion(pieces, boxes, budget.Part(60_000), 2_000).Search(out boxOf);
        if (verdict == Verdict.Unknown && pieces.Sizes.Distinct().Count() <= MostRows)
            verdict = new Dive(pieces, boxes, budget.Part(budget.Left / 2)).Search(12, out boxOf);
        if (verdict == Verdict.Unknown)
            verdict = new Completion(pieces, boxes, budget.Part(budget.Left / 4), 40, 2_000).Search(out boxOf);
        return verdict == Verdict.Unknown ? new Completion(pieces, boxes, budget, 20_000).Search(out boxOf) : verdict;
    }

    /// <summary>Whether a simple count shows that they can't fit.</summary>
    public static bool CantFit(PieceSet pieces, long[] boxes)
    {
        if (pieces.Count == 0)
            return false;
        if (boxes.Length < pieces.LargestBundle || boxes.Length == 0 || boxes[0] < pieces.Sizes[0] || boxes.Sum() < pieces.Total)
            return true;
        return SimpleBounds.Boxes(pieces.Sizes, boxes[0]) > boxes.Length;
    }
}
