using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>How far the work has come, by the steps that are marked: what a mend may still ask for.</summary>
public class MomentTests
{
    [Theory]
    [InlineData("cable-pulled", true, false)]
    [InlineData("cable-found", false, false)]
    [InlineData("measured", false, false)]
    [InlineData("clicked-in", false, true)]
    [InlineData("hub-paired", false, true)]
    public void AMarkOfAPhaseOrALaterOneSaysThatItHasBegun(string step, bool wallOpen, bool hangs)
    {
        var unit = Jobs.Walked().Mark("W01", step).Unit("W01");
        Assert.Equal((wallOpen, hangs), (Moment.WallOpen(unit), Moment.Hangs(unit)));
    }

    [Fact]
    public void WithoutAMarkNothingHasBegun()
    {
        var unit = Jobs.Walked().Unit("W01");
        Assert.True(Moment.WallOpen(unit));
        Assert.False(Moment.Hangs(unit));
        Assert.False(Moment.Begun(unit, Phase.WalkThrough));
        Assert.True(Moment.Begun(Jobs.Walked().Mark("W01", "entry-marked").Unit("W01"), Phase.WalkThrough));
    }

    /// <summary>A window that is wanted after all lies in a wall that is as closed as those around it; while its own cable waits nobody knows.</summary>
    [Fact]
    public void TheWallOfAWindowThatComesLateIsAsClosedAsThoseAroundIt()
    {
        var job = Jobs.Walked("W02", Jobs.Walked()).Mark("W01", "cable-found");
        Assert.False(Moment.WallOpen(job.Unit("W02")));
        Assert.True(Moment.WallOpen(job.Mark("W02", "cable-pulled").Unit("W02")));
        job.Window("W03", "Bath");
        Assert.True(Moment.WallOpen(job.Unit("W03")));
        Assert.False(Moment.WallOpen(job.Mark("W02", "cable-found").Unit("W03")));
    }

    [Fact]
    public void AStepThatWasNotNeededWasGoneByToo()
    {
        var job = Jobs.Walked();
        job.Do(MarkStep.NotNeeded(job.Unit("W01"), StepList.Find("cable-found")!, "no wall was closed"));
        Assert.False(Moment.WallOpen(job.Unit("W01")));
    }

    [Fact]
    public void TheWallsAreOpenWhileThatOfEachUnitIs()
    {
        var job = Jobs.Walked("W02", Jobs.Walked());
        Assert.True(Moment.WallsOpen(job.House));
        Assert.False(Moment.WallsOpen(job.Mark("W02", "cable-found").House));
        Assert.True(Moment.WallsOpen(new TestJob().House));
    }

    [Fact]
    public void AUnitIsOrderedOnceItsDayIsWrittenAndUntilThatIsTakenAway()
    {
        var job = Jobs.Ordered();
        Assert.True(Moment.NotOrdered(job.Unit("W01")));
        Assert.False(Moment.NotOrdered(job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Unit("W01")));
        Assert.True(Moment.NotOrdered(job.Forget("W01", UnitFacts.OrderedOn).Unit("W01")));
    }
}
