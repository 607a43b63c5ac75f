using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

/// <summary>A clock at a time that no history can hold: nothing is saved that could not be read again.</summary>
public class ClockTests
{
    [Theory]
    [InlineData(3009)]
    [InlineData(3000)]
    [InlineData(759)]
    public void NothingIsSavedAtATimeThatNoHistoryHolds(int year)
    {
        var store = new MemoryStore();
        var job = new TestJob(store: store);
        var before = job.Scribe.Log.Changes.Count;
        var clock = new FakeTimeProvider(new DateTimeOffset(year, 3, 2, 8, 0, 0, TimeSpan.Zero));
        var scribe = new Scribe(new MemoryStore("late", job.Scribe.Log.Changes), clock, "Ada");
        var refused = AddItems.Window(scribe.House, "W77", null).Then(scribe.Record);
        Assert.Contains("Put the clock right and save again", refused.Reason);
        Assert.Equal(before, scribe.Log.Changes.Count);
    }

    [Theory]
    [InlineData(1000)]
    [InlineData(2999)]
    public void WhatIsSavedAtTheEdgesIsReadAgain(int year)
    {
        var job = new TestJob();
        var clock = new FakeTimeProvider(new DateTimeOffset(year, 3, 2, 8, 0, 0, TimeSpan.Zero));
        var scribe = new Scribe(new MemoryStore("late", job.Scribe.Log.Changes), clock, "Ada");
        var saved = AddItems.Window(scribe.House, "W77", null).Then(scribe.Record).Value;
        Assert.True(ChangeJson.Read(ChangeJson.Write(saved)).Ok);
    }
}
