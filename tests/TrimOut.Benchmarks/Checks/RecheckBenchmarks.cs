using BenchmarkDotNet.Attributes;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.Checks;

/// <summary>What a person waits for after one edit: the new house and what the checks say of it.</summary>
[MemoryDiagnoser]
public class RecheckBenchmarks
{
    private readonly Dictionary<string, Draft> _edits = [];
    private CheckReport _report = CheckReport.Of(House.Empty);

    [Params(50, 500, 5000)]
    public int Windows { get; set; }

    /// <summary>A tail that is measured, a depth, a mark, a name at the hub, an output, a remote that moves one unit more.</summary>
    [Params("tail", "depth", "mark", "hub-name", "output", "moves")]
    public string Edit { get; set; } = "";

    [GlobalSetup]
    public void Build()
    {
        var house = BigHouse.Of(Windows).House;
        var unit = house.Units[Windows / 2];
        _edits["tail"] = new Draft("tail").Put(unit.Run!.Id, RunFacts.TailAtWindow, Length.FromInches(10));
        _edits["depth"] = new Draft("depth").Put(unit.Window.Id, WindowFacts.Depth, Length.FromInches(3));
        _edits["mark"] = new Draft("mark").PutStored(unit.Id, UnitFacts.Step.Field("shown"), "done");
        _edits["hub-name"] = new Draft("name").Put(unit.Id, UnitFacts.HubName, "Another name");
        _edits["output"] = new Draft("output").Put(unit.Run.Id, RunFacts.Output, 3);
        _edits["moves"] = new Draft("moves").Put(house.Remotes[0].Id, RemoteFacts.Moves, YesNo.Yes, unit.Id);
        _report = CheckReport.Of(house);
    }

    [Benchmark]
    public CheckReport AfterOneEdit() => _report.After(HouseLog.Preview(_report.House, _edits[Edit]));
}
