using CsCheck;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using static TrimOut.Core.Tests.Plans.Cutting.CutOrders;

namespace TrimOut.Core.Tests.Plans.Cutting;

public class CutPropertyTests
{
    private const long Few = 400_000;

    // Lengths to a sixteenth of an inch, bundles of up to three, boxes on hand and boxes to buy.
    private static readonly Gen<CutOrder> AnyOrder =
        from runs in Gen.Select(Gen.Int[100, 20_000], Gen.Int[0, 9]).Array[1, 40]
        from boxes in Gen.Int[2_000, 30_000].Array[0, 6]
        from loss in Gen.Int[0, 64]
        select new CutOrder(
            [.. runs.Select((r, i) => new Piece($"W{i}", Sixteenths(r.Item1), r.Item2 < 3 && i % 7 < 3 ? $"wall {i / 7}" : null))],
            [.. boxes.Select((b, i) => new StockBox($"B{i}", Sixteenths(b)))],
            Sixteenths(loss),
            Sixteenths(24_000));

    [Fact]
    public void NoRunIsLostOrDoubledAndEveryBoxKeepsWithinItsLength() =>
        AnyOrder.Sample(order => AssertSound(order, CutPlanner.Solve(order, steps: Few).Value), iter: 300, seed: "0000KwKv8Z61");

    [Fact]
    public void APlanIsNeverWorseThanFirstFitDecreasing() =>
        AnyOrder.Sample(order =>
        {
            var plan = CutPlanner.Solve(order, CutAim.FewestBoxes, steps: 1_000).Value;
            var plain = FirstFitDecreasing(order);
            Assert.True((plan.ToBuy.Found, plan.Opened.Found).CompareTo(plain) <= 0,
                $"{plan.ToBuy.Found} bought, {plan.Opened.Found} opened; first fit {plain}");
        }, iter: 300, seed: "0000KwKv8Z61");

    [Fact]
    public void ALossPerCutIsTheSameAsLongerRunsAndLongerBoxes() =>
        AnyOrder.Sample(order =>
        {
            var lossless = new CutOrder(
                [.. order.Pieces.Select(p => p with { Length = p.Length + order.LossPerCut })],
                [.. order.Boxes.Select(b => b with { Length = b.Length + order.LossPerCut })],
                Length.Zero,
                order.NewBox + order.LossPerCut);
            var (a, b) = (CutPlanner.Solve(order, CutAim.FewestBoxes, Few).Value, CutPlanner.Solve(lossless, CutAim.FewestBoxes, Few).Value);
            Assert.Equal((a.ToBuy, a.Opened), (b.ToBuy, b.Opened));
        }, iter: 150, seed: "0000KwKv8Z61");

    [Fact]
    public void ShufflingTheOrderChangesNoFigure() =>
        Gen.Select(AnyOrder, Gen.Int[0, 1_000_000]).Sample((order, seed) =>
        {
            var pieces = order.Pieces.ToArray();
            var boxes = order.Boxes.ToArray();
            var random = new Random(seed);
            random.Shuffle(pieces);
            random.Shuffle(boxes);
            var (a, b) = (CutPlanner.Solve(order, steps: Few).Value,
                CutPlanner.Solve(new CutOrder([.. pieces], [.. boxes], order.LossPerCut, order.NewBox), steps: Few).Value);
            Assert.Equal((a.ToBuy, a.Opened, a.OpenedLength, a.LongestLeft), (b.ToBuy, b.Opened, b.OpenedLength, b.LongestLeft));
        }, iter: 100, seed: "0000KwKv8Z61");

    [Fact]
    public void OneMoreRunNeverNeedsFewerBoxes() =>
        Gen.Int[20, 100].Array[2, 30].Sample(sizes =>
        {
            var all = CutPlanner.Solve(PublishedInstances.Order(sizes), CutAim.FewestBoxes).Value;
            var fewer = CutPlanner.Solve(PublishedInstances.Order(sizes[1..]), CutAim.FewestBoxes).Value;
            Assert.True(fewer.Opened.Limit <= all.Opened.Found && fewer.Opened.Found >= all.Opened.Limit - 1, $"{fewer.Opened} without, {all.Opened} with");
        }, iter: 200, seed: "0000KwKv8Z61");

    private static (int ToBuy, int Opened) FirstFitDecreasing(CutOrder order)
    {
        var boxes = order.Boxes.OrderByDescending(b => b.Length).Select(b => (Room: b.Length, New: false, In: new List<Piece>())).ToList();
        foreach (var piece in order.Pieces.OrderByDescending(p => p.Length))
        {
            bool Takes((Length Room, bool New, List<Piece> In) box) =>
                box.In.Aggregate(piece.Length, (sum, p) => sum + p.Length + order.LossPerCut) <= box.Room
                    && (piece.Bundle is null || box.In.All(p => p.Bundle != piece.Bundle));
            var at = boxes.FindIndex(Takes);
            if (at < 0)
                boxes.Add((order.NewBox!.Value, true, [piece]));
            else
                boxes[at].In.Add(piece);
        }
        return (boxes.Count(b => b.New), boxes.Count(b => b.In.Count > 0));
    }

    private static Length Sixteenths(int count) => Length.FromInches(0, count, 16);
}
