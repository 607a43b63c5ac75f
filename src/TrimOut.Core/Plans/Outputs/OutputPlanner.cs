using System.Collections.Immutable;

namespace TrimOut.Core.Plans.Outputs;

/// <summary>Works out which run lands on which output.</summary>
/// <remarks>
/// In this order: fewest panels; counts as alike as can be; the smallest load of units that move together on a panel; rooms
/// kept together; and where moving is allowed, fewest landed runs moved. docs/plans.md says how.
/// </remarks>
public static class OutputPlanner
{
    /// <summary>Steps that are enough for a house, and over in a second or two.</summary>
    public const long UsualSteps = 2_000_000;

    /// <summary>The plan for an order. The same order always gives the same plan.</summary>
    /// <param name="order">What to land on what.</param>
    /// <param name="steps">How much work it may take; where that is not enough the plan says how far it may be off.</param>
    /// <param name="stop">Stops the work.</param>
    /// <returns>The plan, or what is wrong with the order, naming the run or the panel.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Result<OutputPlan> Solve(OutputOrder order, long steps = UsualSteps, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        if (OutputOrderCheck.Refuse(order) is { } wrong)
            return wrong;
        var choices = PanelChoice.All(order, out var spread, out var whole);
        var best = new OutputOptimum(order, choices, new WorkBudget(steps, stop));
        best.Search();
        var per = OutputSearch.PerSplit(order);
        var (splits, moved) = Math.DivRem(best.Cost, per);
        // With sets of panels left out nothing about the chosen ones is proven.
        var (leastPeak, leastCost) = whole ? (best.LeastPeak, best.LeastCost) : (0, 0);
        var leastSplits = leastCost / per;
        var landed = Landed(order, best.PanelOf);
        var panels = landed.Select(l => l.At.Panel).Distinct().Count();
        return new OutputPlan(
            landed,
            new(panels, panels),
            new(spread, whole ? spread : 0),
            new(best.Peak, leastPeak),
            new(splits, leastSplits),
            new(moved, splits == leastSplits ? leastCost % per : 0),
            order.LoadIn);
    }

    private static ImmutableArray<LandedRun> Landed(OutputOrder order, int[] panelOf)
    {
        var places = new OutputPlace[order.Runs.Length];
        for (var i = 0; i < places.Length; i++)
        {
            if (order.Runs[i].Landed is { } stays && stays.Panel == order.Panels[panelOf[i]].Id)
                places[i] = stays;
        }
        for (var p = 0; p < order.Panels.Length; p++)
        {
            var panel = order.Panels[p];
            var taken = places.Where(l => l?.Panel == panel.Id).Select(l => l.Output).ToHashSet();
            var free = new Queue<int>(Enumerable.Range(1, panel.Outputs).Where(o => !taken.Contains(o)));
            for (var i = 0; i < places.Length; i++)
            {
                if (panelOf[i] == p && places[i] is null)
                    places[i] = new(panel.Id, free.Dequeue());
            }
        }
        return [.. order.Runs.Select((r, i) => new LandedRun(r, places[i], r.Landed is not null && r.Landed != places[i]))];
    }
}
