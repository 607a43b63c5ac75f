using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Electrical;

public class LoadTests
{
    [Fact]
    public void TheLargerOfStartingAndRunningCounts()
    {
        var job = Jobs.Walked();
        Assert.Equal(new Current(1), Load.Of(job.Unit("W01")));
        Assert.Equal(new Current(2), Load.Of(job.SayOf("Roller", CoveringKindFacts.RunningCurrent, "2").Unit("W01")));
        Assert.Null(Load.Of(job.SayOf("Roller", CoveringKindFacts.RunningCurrent, "").Unit("W01")));
    }

    [Fact]
    public void AGroupOnTwoPanelsLoadsEachWithItsOwn()
    {
        var job = new TestJob().WithPanel().WithPanel("P2");
        foreach (var (tag, panel) in new[] { ("W01", "P1"), ("W02", "P1"), ("W03", "P2") })
            job.Window(tag).Say(tag, UnitFacts.Group, "South").Say(tag, RunFacts.Panel, panel);
        var both = Load.Largest([job.Unit("W01"), job.Unit("W02")])!.Value;
        Assert.Equal(("group South", 2, new Current(2)), (both.Name.For(new Reader(job.House)), both.Units, both.Peak));
        Assert.Equal(new Current(1), Load.Largest([job.Unit("W03")])!.Value.Peak);
        Assert.Null(Load.Largest([]));
    }
}
