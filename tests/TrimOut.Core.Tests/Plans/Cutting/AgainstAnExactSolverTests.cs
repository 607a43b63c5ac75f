using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using static TrimOut.Core.Tests.Plans.Cutting.CutOrders;

namespace TrimOut.Core.Tests.Plans.Cutting;

public class AgainstAnExactSolverTests
{
    private static readonly long Foot = Length.FromFeet(1).Nanometres;

    [Fact]
    public void TwoHundredAndFortyRandomOrdersComeOutAsTheExactSolverHasThem()
    {
        var random = new Random(20260302);
        var (refused, proven) = (0, 0);
        for (var at = 0; at < 240; at++)
        {
            var order = Random(random, at);
            var judge = new ExactCutModel(order, order.NewBox is null ? 0 : order.Pieces.Length, Foot).All();
            var plan = CutPlanner.Solve(order);
            if (judge is not { } best)
            {
                Assert.False(plan.Ok, $"order {at} can't be cut");
                Assert.DoesNotContain("none was ruled out", plan.Reason, StringComparison.Ordinal);
                refused++;
                continue;
            }
            Assert.True(plan.Ok, $"order {at}: {plan.Reason}");
            AssertSound(order, plan.Value);
            Assert.True(plan.Value.Proven, $"order {at}: {plan.Value.Says(DisplayUnits.Inches)}");
            Assert.Equal((at, best.ToBuy, best.Opened), (at, plan.Value.ToBuy.Found, plan.Value.Opened.Found));
            Assert.Equal((at, best.OpenedLength * Foot, best.LongestLeft * Foot),
                (at, plan.Value.OpenedLength.Found.Nanometres, plan.Value.LongestLeft.Found.Nanometres));
            proven++;
        }
        // Both sorts must really have been met.
        Assert.True(refused >= 5 && proven >= 200, $"{refused} refused, {proven} proven");
    }

    private static CutOrder Random(Random random, int at)
    {
        var runs = Enumerable.Range(0, random.Next(3, 11)).Select(_ => random.Next(15, 95)).ToArray();
        var boxes = Enumerable.Range(0, at % 3 == 0 ? 0 : random.Next(2, 7)).Select(_ => random.Next(60, 180)).ToArray();
        var canBuy = at % 3 != 1;
        var order = Feet(runs, boxes, loss: random.Next(0, 3), newBox: canBuy ? 150 : null);
        return at % 2 == 0 ? order : order.Bundled("east", "W01", "W03").Bundled("west", "W02", "W04", "W05");
    }
}
