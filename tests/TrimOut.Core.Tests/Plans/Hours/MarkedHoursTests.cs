using TrimOut.Core.Decisions;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Hours;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Hours;

public class MarkedHoursTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02").Window("W03");

    // 8:00, 8:10 and 8:35: ten minutes and twenty-five.
    [Fact]
    public void BetweenTwoMarksOfADayThereIsWork()
    {
        At(8, 0, "W01", "clicked-in").At(8, 10, "W02", "clicked-in").At(8, 35, "W03", "clicked-in");
        Assert.Equal(35, Minutes(Phase.Hang));
        Assert.Equal([(Phase.Hang, 10m / 60)], PhaseHours.ByMarks(_job.Scribe.Log, _job.Unit("W02")));
        Assert.Empty(PhaseHours.ByMarks(_job.Scribe.Log, _job.Unit("W01")));
    }

    // 29 CFR 785.19 (from memory): ordinarily 30 minutes or more is long enough for a meal, which is no work.
    [Theory]
    [InlineData(29, 29)]
    [InlineData(30, 0)]
    [InlineData(300, 0)]
    public void AGapAsLongAsAMealIsNoWork(int minutes, int worked)
    {
        At(8, 0, "W01", "clicked-in").At(8 + minutes / 60, minutes % 60, "W02", "clicked-in");
        Assert.Equal(worked, Minutes(Phase.Hang));
    }

    [Fact]
    public void AnotherPhaseBetweenTwoMarksIsCountedForNeither()
    {
        At(8, 0, "W01", "clicked-in").At(8, 10, "W01", "hub-paired").At(8, 20, "W02", "clicked-in");
        Assert.Equal((0, 0), (Minutes(Phase.Hang), Minutes(Phase.Pair)));
    }

    [Fact]
    public void TwoPeopleWorkBesideEachOther()
    {
        At(8, 0, "W01", "clicked-in").At(8, 5, "W03", "clicked-in", by: "Bo").At(8, 15, "W03", "moves-free", by: "Bo").At(8, 20, "W02", "clicked-in");
        Assert.Equal(30, Minutes(Phase.Hang));
    }

    [Fact]
    public void MidnightIsNoWork()
    {
        At(23, 50, "W01", "clicked-in").At(24, 5, "W02", "clicked-in");
        Assert.Equal(0, Minutes(Phase.Hang));
    }

    [Fact]
    public void WhatWasUndoneOrNotNeededIsNoWork()
    {
        At(8, 0, "W01", "clicked-in").At(8, 10, "W02", "clicked-in");
        Assert.True(_job.Scribe.Undo().Ok);
        _job.Do(MarkStep.NotNeeded(_job.Unit("W03"), StepList.Find("clicked-in")!, "fixed glass"));
        Assert.Equal(0, Minutes(Phase.Hang));
    }

    private double Minutes(Phase phase) => MarkedHours.Of(_job.Scribe.Log).Where(m => m.Key.Phase == phase).Sum(m => m.Value.TotalMinutes);

    private MarkedHoursTests At(int hour, int minute, string tag, string step, string? by = null)
    {
        _job.Clock.SetUtcNow(new DateTimeOffset(2026, 6, 1, 0, 0, 0, TimeSpan.Zero).AddHours(hour).AddMinutes(minute));
        _job.Scribe.By = by ?? "Ash";
        Assert.True(MarkStep.Done(_job.Unit(tag), StepList.Find(step)!).Then(_job.Scribe.Record).Ok);
        return this;
    }
}
