using TrimOut.Core.Decisions;
using TrimOut.Core.Phases;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Writing;

public class TicksTests
{
    [Fact]
    public void ABoxIsTickedWhereItsStepIsMarkedAndNowhereElse()
    {
        var job = new TestJob().Window("W01").Window("W02");
        Assert.Equal(["☐", "☐"], Pulled(job));
        job.Do(MarkStep.Done(job.Unit("W01"), StepList.Find("cable-pulled")!));
        Assert.Equal(["☒", "☐"], Pulled(job));
    }

    [Fact]
    public void WhatIsNotNeededHasNoBox()
    {
        var job = new TestJob().Window("W01");
        job.Do(MarkStep.NotNeeded(job.Unit("W01"), StepList.Find("clicked-in")!, "It is screwed on."));
        Assert.Equal(Inline.Dash, Ticks.Of(job.Unit("W01"), "clicked-in"));
    }

    private static IEnumerable<string> Pulled(TestJob job) =>
        PaperList.Find("pull-sheet")!.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Home runs").Select(r => r[^1]);
}
