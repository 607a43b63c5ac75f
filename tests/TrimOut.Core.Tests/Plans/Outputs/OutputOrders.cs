using TrimOut.Core.Plans.Outputs;

namespace TrimOut.Core.Tests.Plans.Outputs;

/// <summary>Orders that are short to write, and what must hold of every plan.</summary>
internal static class OutputOrders
{
    public static OutputOrder Panels(params int[] outputs) => new([.. outputs.Select((o, i) => new PanelToFill($"P{i + 1}", o))], []);

    /// <summary>So many runs of a room, moving with these.</summary>
    public static OutputOrder Room(this OutputOrder order, string? room, int runs, params string[] movesWith) => order with
    {
        Runs = order.Runs.AddRange(Enumerable.Range(0, runs).Select(i => new RunToLand($"W{order.Runs.Length + i + 1:00}", room, [.. movesWith]))),
    };

    public static OutputOrder Landed(this OutputOrder order, string run, string panel, int output) => order with
    {
        Runs = [.. order.Runs.Select(r => r.Id == run ? r with { Landed = new(panel, output) } : r)],
    };

    public static string PanelsOf(this OutputPlan plan, string room) =>
        string.Join(' ', plan.Runs.Where(r => r.Run.Room == room).Select(r => r.At.Panel).Distinct().Order());

    /// <summary>Every run once on an output of its own, landed ones in place unless moving is allowed, figures that are true.</summary>
    public static void AssertSound(OutputOrder order, OutputPlan plan)
    {
        Assert.Equal(order.Runs, plan.Runs.Select(r => r.Run));
        Assert.Equal(plan.Runs.Length, plan.Runs.Select(r => r.At).Distinct().Count());
        Assert.All(plan.Runs, r => Assert.InRange(r.At.Output, 1, order.Panels.Single(p => p.Id == r.At.Panel).Outputs));
        Assert.All(plan.Runs, r => Assert.Equal(r.Run.Landed is { } at && at != r.At, r.Moved));
        if (!order.MayMove)
            Assert.DoesNotContain(plan.Runs, r => r.Moved);
        var counts = plan.Runs.CountBy(r => r.At.Panel).Select(c => c.Value).ToList();
        var peak = plan.Runs.SelectMany(r => r.Run.MovesWith.Append("alone " + r.Run.Id).Select(s => (s, r.At.Panel, r.Run.Load))).GroupBy(r => (r.s, r.Panel))
            .Max(g => g.Sum(r => r.Load));
        var splits = plan.Runs.Where(r => r.Run.Room is not null).GroupBy(r => r.Run.Room).Sum(g => g.Select(r => r.At.Panel).Distinct().Count() - 1);
        Assert.Equal((counts.Count, counts.Max() - counts.Min(), peak, splits, plan.Runs.Count(r => r.Moved)),
            (plan.Panels.Found, plan.Spread.Found, plan.Peak.Found, plan.RoomSplits.Found, plan.Moved.Found));
        Assert.True(plan.Peak.Limit <= plan.Peak.Found && plan.RoomSplits.Limit <= plan.RoomSplits.Found && plan.Moved.Limit <= plan.Moved.Found,
            "a limit is above what was found");
    }
}
