using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Cutting;

/// <summary>Whether an order makes sense, before any work goes into it.</summary>
internal static class CutOrderCheck
{
    private static readonly Length Longest = Length.FromMetres(10_000);

    /// <summary>What is wrong with an order; null when nothing is.</summary>
    public static Refusal? Refuse(CutOrder order)
    {
        string Show(Length length) => length.ShowRounded(order.Units, LengthScale.Run);

        if (order.Pieces.IsDefaultOrEmpty)
            return new Refusal("There is no run to cut.");
        if (order.LossPerCut < Length.Zero || order.LossPerCut > Length.FromMetres(10))
            return new Refusal($"Waste per cut: {Show(order.LossPerCut)} makes no sense. Say 0 or a short length.");
        if (Twice(order.Pieces.Select(p => p.Id)) is { } run)
            return new Refusal($"Run {run} is in the order twice.");
        foreach (var piece in order.Pieces)
        {
            if (piece.Length <= Length.Zero || piece.Length > Longest)
                return new Refusal($"Run {piece.Id}: a length of {Show(piece.Length)} can't be cut. Give the length that it needs.");
        }
        var boxes = order.Boxes;
        if (Twice(boxes.Select(b => b.Id)) is { } twice)
            return new Refusal($"Box {twice} is in the order twice.");
        foreach (var box in boxes)
        {
            if (box.Length <= Length.Zero || box.Length > Longest)
                return new Refusal($"Box {box.Id}: it can't hold {Show(box.Length)}. Give the length left in it, or leave it out.");
        }
        if (order.NewBox is { } bought && (bought <= Length.Zero || bought > Longest))
            return new Refusal($"A new box can't hold {Show(bought)}.");
        if (boxes.IsEmpty && order.NewBox is null)
            return new Refusal("There is no box to cut from. Add the boxes on hand, or say how much a new box holds.");
        var most = boxes.Select(b => b.Length).Append(order.NewBox ?? Length.Zero).Max();
        if (order.Pieces.Where(p => p.Length > most).MaxBy(p => p.Length) is { } tooLong)
            return new Refusal(
                $"Run {tooLong.Id} needs {Show(tooLong.Length)} and the longest box holds {Show(most)}. A run has no splice: " +
                    "get a longer box or find a shorter way.");
        if (order.NewBox is null && order.Pieces.Where(p => p.Bundle is not null).GroupBy(p => p.Bundle)
            .MaxBy(g => g.Count()) is { } bundle && bundle.Count() > boxes.Length)
            return new Refusal(
                $"Bundle {bundle.Key} pulls {bundle.Count()} runs at once and there are {boxes.Length} boxes: {string.Join(", ", bundle.Select(p => p.Id))}.");
        return null;
    }

    private static string? Twice(IEnumerable<string> ids)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return ids.FirstOrDefault(id => !seen.Add(id));
    }
}
