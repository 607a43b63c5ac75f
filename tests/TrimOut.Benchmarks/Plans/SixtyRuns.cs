using BenchmarkDotNet.Attributes;
using TrimOut.Core.Plans.Cutting;

namespace TrimOut.Benchmarks.Plans;

/// <summary>The fewest boxes for 60 runs, proven by both: how long it takes.</summary>
public class SixtyRuns
{
    private IReadOnlyList<CutOrder> _orders = [];

    /// <summary>What the runs are like.</summary>
    [Params(CutInstances.House, CutInstances.Uniform)]
    public string Sort { get; set; } = "";

    /// <summary>Makes the instances.</summary>
    [GlobalSetup]
    public void Make() => _orders = Sort == CutInstances.House
        ? [.. Enumerable.Range(1, 3).Select(seed => CutInstances.Of(Sort, 60, seed))]
        : CutInstances.Contested(Sort, 60, 3);

    /// <summary>The outside solver, begun with first fit decreasing.</summary>
    [Benchmark(Baseline = true)]
    public int OrTools() => _orders.Sum(o => CutInstances.Outside(o, 60) is (var boxes, true) ? boxes : throw new InvalidOperationException("not proven"));

    /// <summary>Ours.</summary>
    [Benchmark]
    public int TrimOut() =>
        _orders.Sum(o => CutPlanner.Solve(o, CutAim.FewestBoxes).Value is { FewestProven: true } plan
            ? plan.Opened.Found
            : throw new InvalidOperationException("not proven"));

    /// <summary>Ours, and the most useful leftover with it.</summary>
    [Benchmark]
    public int TrimOutWithLeftover() => _orders.Sum(o => CutPlanner.Solve(o).Value.Opened.Found);
}
