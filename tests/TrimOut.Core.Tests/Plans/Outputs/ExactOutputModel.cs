using Google.OrTools.Sat;
using TrimOut.Core.Plans.Outputs;

namespace TrimOut.Core.Tests.Plans.Outputs;

/// <summary>The output plan as a model for a general exact solver: the outside judge of ours.</summary>
internal static class ExactOutputModel
{
    /// <summary>All five figures at their best, one after the other.</summary>
    public static (long Panels, long Spread, long Peak, long Splits, long Moved) Solve(OutputOrder order)
    {
        var model = new CpModel();
        var (runs, panels) = (order.Runs.Length, order.Panels.Length);
        var on = new BoolVar[runs, panels];
        for (var r = 0; r < runs; r++)
        {
            for (var p = 0; p < panels; p++)
                on[r, p] = model.NewBoolVar($"x{r},{p}");
            var run = r;
            model.AddExactlyOne(Enumerable.Range(0, panels).Select(p => on[run, p]));
        }
        var moves = new List<ILiteral>();
        for (var r = 0; r < runs; r++)
        {
            if (order.Runs[r].Landed is not { } at)
                continue;
            var home = on[r, order.Panels.Select((p, i) => (p, i)).Single(p => p.p.Id == at.Panel).i];
            moves.Add(home.Not());
            if (!order.MayMove)
                model.Add(home == 1);
        }
        var used = order.Panels.Select((_, p) => model.NewBoolVar($"u{p}")).ToArray();
        var fullest = model.NewIntVar(0, runs, "fullest");
        var emptiest = model.NewIntVar(0, runs, "emptiest");
        for (var p = 0; p < panels; p++)
        {
            var count = LinearExpr.Sum(Enumerable.Range(0, runs).Select(r => on[r, p]));
            model.Add(count <= order.Panels[p].Outputs * used[p]);
            model.Add(count >= used[p]);
            model.Add(fullest >= count);
            model.Add(emptiest <= count).OnlyEnforceIf(used[p]);
        }
        var peak = model.NewIntVar(order.Runs.Max(r => r.Load), order.Runs.Sum(r => r.Load), "peak");
        foreach (var set in order.Runs.SelectMany(r => r.MovesWith).Distinct())
        {
            for (var p = 0; p < panels; p++)
                model.Add(
                    peak >= LinearExpr.Sum(Enumerable.Range(0, runs).Where(r => order.Runs[r].MovesWith.Contains(set))
                        .Select(r => order.Runs[r].Load * on[r, p])));
        }
        var splits = new List<LinearExpr>();
        foreach (var room in Enumerable.Range(0, runs).Where(r => order.Runs[r].Room is not null).GroupBy(r => order.Runs[r].Room))
        {
            var spread = new List<BoolVar>();
            for (var p = 0; p < panels; p++)
            {
                var there = model.NewBoolVar($"{room.Key}{p}");
                model.AddMaxEquality(there, room.Select(r => on[r, p]));
                spread.Add(there);
            }
            splits.Add(LinearExpr.Sum(spread) - 1);
        }

        long Least(LinearExpr figure)
        {
            model.Minimize(figure);
            var solver = new CpSolver { StringParameters = "max_time_in_seconds:300,num_workers:1" };
            if (solver.Solve(model) != CpSolverStatus.Optimal)
                throw new InvalidOperationException("The outside solver did not finish.");
            var value = (long)Math.Round(solver.ObjectiveValue);
            model.Add(figure == value);
            return value;
        }

        return (Least(LinearExpr.Sum(used)), Least(fullest - emptiest), Least(peak), splits.Count == 0 ? 0 : Least(LinearExpr.Sum(splits)),
            moves.Count == 0 ? 0 : Least(LinearExpr.Sum(moves)));
    }
}
