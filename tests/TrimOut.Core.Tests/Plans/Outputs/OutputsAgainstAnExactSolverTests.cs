using CsCheck;
using TrimOut.Core.Plans.Outputs;
using static TrimOut.Core.Tests.Plans.Outputs.OutputOrders;

namespace TrimOut.Core.Tests.Plans.Outputs;

public class OutputsAgainstAnExactSolverTests
{
    [Fact]
    public void TwoHundredAndTenRandomOrdersComeOutAsTheExactSolverHasThem()
    {
        var random = new Random(20260303);
        var moved = 0;
        for (var at = 0; at < 210; at++)
        {
            var order = Random(random, at);
            var plan = OutputPlanner.Solve(order);
            Assert.True(plan.Ok, $"order {at}: {plan.Reason}");
            AssertSound(order, plan.Value);
            Assert.True(plan.Value.Proven, $"order {at}: {plan.Value.Says()}");
            var judge = ExactOutputModel.Solve(order);
            Assert.Equal((at, judge.Panels, judge.Spread, judge.Peak), (at, plan.Value.Panels.Found, plan.Value.Spread.Found, plan.Value.Peak.Found));
            Assert.Equal((at, judge.Splits, judge.Moved), (at, plan.Value.RoomSplits.Found, plan.Value.Moved.Found));
            moved += plan.Value.Moved.Found > 0 ? 1 : 0;
        }
        Assert.True(moved >= 5, $"only {moved} orders moved anything");
    }

    [Fact]
    public void EveryRunLandsOnceWhateverTheHouse() =>
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var random = new Random(seed);
            var order = Random(random, seed % 9);
            AssertSound(order, OutputPlanner.Solve(order, steps: 5_000).Value);
        }, iter: 300);

    [Fact]
    public void AFullHouseOfSeventyUnitsIsPlannedAndProven()
    {
        var order = Panels(10, 10, 10, 10, 10, 10, 10, 10);
        int[] rooms = [6, 5, 5, 4, 4, 4, 4, 3, 3, 3, 3, 3, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 1];
        for (var room = 0; room < rooms.Length; room++)
            order = order.Room($"Room {room}", rooms[room], $"room {room}", room % 3 == 0 ? "south" : "north");
        var plan = OutputPlanner.Solve(order).Value;
        AssertSound(order, plan);
        Assert.Equal((7, 0), (plan.Panels.Found, plan.Spread.Found));
        Assert.Equal((7, 7), (plan.Peak.Found, plan.Peak.Limit));
        Assert.InRange(plan.RoomSplits.Found, plan.RoomSplits.Limit, 8);
    }

    private static OutputOrder Random(Random random, int at)
    {
        var order = Panels([.. Enumerable.Range(0, random.Next(2, 5)).Select(_ => at % 4 == 0 ? random.Next(3, 8) : 6)]);
        var room = order.Panels.Sum(p => p.Outputs);
        var runs = random.Next(2, Math.Min(room, 11) + 1);
        var list = Enumerable.Range(0, runs).Select(i => new RunToLand(
            $"W{i:00}",
            random.Next(8) == 0 ? null : $"room {random.Next(1 + runs / 3)}",
            [.. new[] { $"group {random.Next(4)}", $"scene {random.Next(3)}" }.Where(_ => random.Next(2) == 0)],
            at % 5 == 0 ? random.Next(1, 5) : 1)).ToList();
        if (at % 3 != 0)
        {
            var free = order.Panels.SelectMany(p => Enumerable.Range(1, p.Outputs).Select(o => new OutputPlace(p.Id, o))).ToArray();
            random.Shuffle(free);
            for (var i = 0; i < random.Next(runs); i++)
                list[i] = list[i] with { Landed = free[i] };
        }
        return order with { Runs = [.. list], MayMove = at % 3 == 2 };
    }
}
