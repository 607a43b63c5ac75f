using BenchmarkDotNet.Attributes;
using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.Checks;

/// <summary>All checks over houses of three sizes: the time grows with the windows, and no faster.</summary>
[MemoryDiagnoser]
public class CheckBenchmarks
{
    private House _house = House.Empty;

    [Params(50, 500, 5000)]
    public int Windows { get; set; }

    [GlobalSetup]
    public void Build() => _house = BigHouse.Of(Windows).House;

    /// <summary>Every check, over a house that was seen before.</summary>
    [Benchmark]
    public CheckReport AllChecks() => CheckReport.Of(_house);

    /// <summary>The same over a house that was just opened: its views are built too.</summary>
    [Benchmark]
    public CheckReport AllChecksOfANewHouse() => CheckReport.Of(new House(_house.Items));
}
