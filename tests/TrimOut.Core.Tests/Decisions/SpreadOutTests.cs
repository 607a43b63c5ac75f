using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Outputs;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class SpreadOutTests
{
    [Fact]
    public void EighteenUnitsAreSpreadNineAndNine()
    {
        var job = Job(2, 18);
        job.Do(Landing.SpreadOut(job.House));
        Assert.Equal([9, 9], job.House.Panels.Select(p => p.Runs.Count()));
        Assert.Equal(18, job.House.Runs.Select(r => (r.Panel!.Id, r.Output)).Distinct().Count());
    }

    [Fact]
    public void ARunThatWasLandedByHandStays()
    {
        var job = Job(2, 6);
        job.Do(Landing.Land(job.Run("W03"), job.House.Panels[1], 7));
        job.Do(Landing.SpreadOut(job.House));
        Assert.Equal(("P2", 7), (job.Run("W03").Panel!.Name, job.Run("W03").Output));
    }

    [Fact]
    public void UnitsOfAGroupAreSharedOutOverThePanels()
    {
        var job = Job(2, 12);
        foreach (var tag in new[] { "W01", "W02", "W03", "W04" })
            job.Say(tag, UnitFacts.Group, "south");
        job.Do(Landing.SpreadOut(job.House));
        Assert.Equal([2, 2], new[] { "W01", "W02", "W03", "W04" }.CountBy(t => job.Run(t).Panel!.Name).Select(c => c.Value));
    }

    [Fact]
    public void TheLoadIsTheStartingCurrentOnlyWhereAllAreKnown()
    {
        var job = Job(1, 2);
        Assert.Equal(("mA", 1000), (HouseOutputs.Order(job.House).LoadIn, HouseOutputs.Order(job.House).Runs[0].Load));
        job.SayOf("Roller", CoveringKindFacts.StartingCurrent, "");
        Assert.Equal(("units", 1), (HouseOutputs.Order(job.House).LoadIn, HouseOutputs.Order(job.House).Runs[0].Load));
    }

    [Fact]
    public void NothingWaitingIsSaid()
    {
        var job = Job(1, 2);
        job.Do(Landing.SpreadOut(job.House));
        Assert.Equal("Every run is on an output already.", Landing.SpreadOut(job.House).Reason);
    }

    [Fact]
    public void TooFewOutputsAreSaidWithBothNumbers() =>
        Assert.Equal("11 runs wait for an output and 10 are free. Add a panel first.", Landing.SpreadOut(Job(1, 11).House).Reason);

    private static TestJob Job(int panels, int windows)
    {
        var job = Enumerable.Range(1, panels).Aggregate(new TestJob(), (j, p) => j.Add(ItemKind.Panel, $"P{p}"));
        return Enumerable.Range(1, windows).Aggregate(job, (j, w) => j.Window($"W{w:00}", $"Room {w % 5}"));
    }
}
