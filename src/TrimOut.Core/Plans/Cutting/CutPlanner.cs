using System.Collections.Immutable;
using TrimOut.Core.Plans.Cutting.Solving;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Cutting;

/// <summary>Works out which run to cut from which box.</summary>
/// <remarks>
/// In this order: fewest boxes to buy, fewest boxes opened, least cable in the boxes opened (what stays shut stays whole),
/// longest single piece left in an opened box. docs/plans.md says how.
/// </remarks>
public static class CutPlanner
{
    /// <summary>Steps that are enough for a house, and over in about a second.</summary>
    public const long UsualSteps = 20_000_000;

    /// <summary>The plan for an order. The same order always gives the same plan.</summary>
    /// <param name="order">What to cut from what.</param>
    /// <param name="aim">How far to go.</param>
    /// <param name="steps">How much work it may take; where that is not enough the plan says how far it may be off.</param>
    /// <param name="stop">Stops the work.</param>
    /// <returns>The plan, or what is wrong with the order, naming the run or the box.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Result<CutPlan> Solve(CutOrder order, CutAim aim = CutAim.UsefulLeftover, long steps = UsualSteps, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        if (CutOrderCheck.Refuse(order) is { } wrong)
            return wrong;
        var left = new WorkBudget(steps, stop);
        var shop = new Workshop(order, order.NewBox is null ? 0 : MostToBuy(order));
        var leastToBuy = FewestBoxes.ToBuy(shop, left.Part(left.Left / 2));
        if (shop.Best is null)
            return NotFound(order, leastToBuy > shop.New);
        var leastOpened = Settled(shop, b => b.ToBuy, () => FewestBoxes.ToOpen(shop, left.Part(left.Left / 2)));
        var leastLength = shop.Best.OpenedLength;
        var mostLeft = shop.Best.LongestLeft;
        if (aim == CutAim.UsefulLeftover)
        {
            leastLength = Settled(shop, b => (b.ToBuy, b.Opened), () => LeastOpened.Search(shop, left.Part(left.Left / 2)));
            mostLeft = Settled(shop, b => (b.ToBuy, b.Opened, b.OpenedLength), () => LongestLeftover.Search(shop, left.Part(left.Left / 2)));
        }
        var best = shop.Best;
        var boxes = Laid(order, shop);
        var used = boxes.Select(b => b.Box.Id).ToHashSet();
        return new CutPlan(
            boxes,
            [.. order.Boxes.Where(b => !used.Contains(b.Id))],
            new(best.ToBuy, leastToBuy),
            new(best.Opened, Math.Min(best.Opened, leastOpened)),
            new(Length.FromNanometres(best.OpenedLength), Length.FromNanometres(Math.Min(best.OpenedLength, leastLength))),
            new(Length.FromNanometres(best.LongestLeft), Length.FromNanometres(Math.Max(best.LongestLeft, mostLeft))));
    }

    /// <summary>A limit holds for the figures before it: where the search bettered one of these by the way, it is made again.</summary>
    private static T Settled<T>(Workshop shop, Func<Packing, object> before, Func<T> search)
    {
        object held;
        T limit;
        do
        {
            held = before(shop.Best!);
            limit = search();
        }
        while (!held.Equals(before(shop.Best!)));
        return limit;
    }

    /// <summary>More new boxes than first fit decreasing takes are never of use.</summary>
    private static int MostToBuy(CutOrder order)
    {
        var plain = new Workshop(order, order.Pieces.Length);
        return FirstFit.Pack(plain.Pieces, plain.Rooms) is { } boxOf ? Math.Max(0, boxOf.Max() + 1 - plain.OnHand.Length) : order.Pieces.Length;
    }

    private static Refusal NotFound(CutOrder order, bool impossible)
    {
        string Show(Length length) => length.ShowRounded(order.Units, LengthScale.Run);

        var need = order.Pieces.Aggregate(Length.Zero, (sum, p) => sum + p.Length);
        var have = order.Boxes.Aggregate(Length.Zero, (sum, b) => sum + b.Length);
        var known = $"The runs need {Show(need)} and the boxes on hand hold {Show(have)}.";
        return new Refusal(!impossible ? $"{known} No way of cutting them was found, and none was ruled out: get another box."
            : order.NewBox is null ? $"{known} No way of cutting them without a splice does: get another box."
            : $"{known} No way of cutting them without a splice does, whatever is bought: get a longer box.");
    }

    /// <summary>
    /// Pulls in one order for all boxes, so that runs of a bundle come off their boxes at the same time: the pull with the longest run first.
    /// </summary>
    private static ImmutableArray<BoxCuts> Laid(CutOrder order, Workshop shop)
    {
        var pulls = order.Pieces.GroupBy(p => (Bundled: p.Bundle is not null, Name: p.Bundle ?? p.Id))
            .OrderByDescending(g => g.Max(p => p.Length)).ThenBy(g => g.Key.Name, StringComparer.Ordinal)
            .SelectMany((g, at) => g.Select(p => (p.Id, at))).ToDictionary(p => p.Id, p => p.at);
        var taken = shop.OnHand.Select(b => b.Id).ToHashSet();
        return
        [
            .. Enumerable.Range(0, shop.Pieces.Count)
                .GroupBy(i => shop.Best!.BoxOf[i], i => order.Pieces[shop.Pieces.Source[i]])
                .OrderBy(g => g.Key)
                .Select(g => Marked(
                    g.Key < shop.OnHand.Length ? shop.OnHand[g.Key] : new StockBox(NewName(taken), order.NewBox!.Value),
                    g.Key >= shop.OnHand.Length,
                    g.OrderBy(p => pulls[p.Id]),
                    order.LossPerCut)),
        ];
    }

    private static BoxCuts Marked(StockBox box, bool toBuy, IEnumerable<Piece> pieces, Length loss)
    {
        var (cuts, at) = (ImmutableArray.CreateBuilder<Cut>(), Length.Zero);
        foreach (var piece in pieces)
        {
            cuts.Add(new(piece, at, at + piece.Length));
            at += piece.Length + loss;
        }
        return new(box, toBuy, cuts.ToImmutable(), Length.Max(Length.Zero, box.Length - at));
    }

    private static string NewName(HashSet<string> taken)
    {
        var number = 1;
        while (!taken.Add($"new box {number}"))
            number++;
        return $"new box {number}";
    }
}
