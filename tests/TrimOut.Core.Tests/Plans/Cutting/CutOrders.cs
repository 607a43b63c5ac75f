using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Plans.Cutting;

/// <summary>Orders in whole feet, short to write, and what must hold of every plan.</summary>
internal static class CutOrders
{
    public static CutOrder Feet(int[] runs, int[] boxes, int loss = 0, int? newBox = null) => new(
        [.. runs.Select((r, i) => new Piece($"W{i + 1:00}", Length.FromFeet(r)))],
        [.. boxes.Select((b, i) => new StockBox($"B{i + 1}", Length.FromFeet(b)))],
        Length.FromFeet(loss),
        newBox is { } n ? Length.FromFeet(n) : null);

    public static CutOrder Bundled(this CutOrder order, string bundle, params string[] runs) => order with
    {
        Pieces = [.. order.Pieces.Select(p => runs.Contains(p.Id) ? p with { Bundle = bundle } : p)],
    };

    /// <summary>The marks of a box, in whole feet: "W01 0-60, W02 60-90".</summary>
    public static string Marks(this BoxCuts box) => string.Join(", ", box.Cuts.Select(c => $"{c.Piece.Id} {c.From.Feet:0.##}-{c.To.Feet:0.##}"));

    /// <summary>Every run once, each box within its length, marks that follow one another, bundles apart, figures that are true.</summary>
    public static void AssertSound(CutOrder order, CutPlan plan)
    {
        Assert.Equal(order.Pieces.OrderBy(p => p.Id), plan.Boxes.SelectMany(b => b.Cuts).Select(c => c.Piece).OrderBy(p => p.Id));
        foreach (var box in plan.Boxes)
        {
            var at = Length.Zero;
            foreach (var cut in box.Cuts)
            {
                Assert.Equal((at, at + cut.Piece.Length), (cut.From, cut.To));
                at = cut.To + order.LossPerCut;
            }
            Assert.True(box.Cuts[^1].To <= box.Box.Length, $"{box.Box.Id} is too short");
            Assert.Equal(Length.Max(Length.Zero, box.Box.Length - at), box.LeftOver);
            Assert.DoesNotContain(box.Cuts.Where(c => c.Piece.Bundle is not null).GroupBy(c => c.Piece.Bundle), g => g.Count() > 1);
            Assert.Equal(box.ToBuy ? order.NewBox : order.Boxes.Single(b => b.Id == box.Box.Id).Length, box.Box.Length);
        }
        Assert.Equal(order.Boxes.OrderBy(b => b.Id), plan.Boxes.Where(b => !b.ToBuy).Select(b => b.Box).Concat(plan.Shut).OrderBy(b => b.Id));
        Assert.Equal(plan.Boxes.Count(b => b.ToBuy), plan.ToBuy.Found);
        Assert.Equal(plan.Boxes.Length, plan.Opened.Found);
        Assert.Equal(plan.Boxes.Aggregate(Length.Zero, (sum, b) => sum + b.Box.Length), plan.OpenedLength.Found);
        Assert.Equal(plan.Boxes.Max(b => b.LeftOver), plan.LongestLeft.Found);
        Assert.True(plan.ToBuy.Limit <= plan.ToBuy.Found && plan.Opened.Limit <= plan.Opened.Found, "a limit is above what was found");
        Assert.True(plan.OpenedLength.Limit <= plan.OpenedLength.Found && plan.LongestLeft.Limit >= plan.LongestLeft.Found, "a limit is past what was found");
    }
}
