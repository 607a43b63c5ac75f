using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class LastSaidTests
{
    private static readonly string[] Facts = [WindowFacts.RoughWidth.Name, WindowFacts.RoughHeight.Name];

    [Fact]
    public void OfSeveralFactsTheLatestWordCounts()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughHeight, "60").Say("W01", WindowFacts.RoughWidth, "45");
        job.Say("W01", WindowFacts.Note, "x");
        Assert.Equal(job.Scribe.Log.Changes[^2], Last(job));
        job.Say("W01", WindowFacts.RoughHeight, "61");
        Assert.Equal(job.Scribe.Log.Changes[^1], Last(job));
        Assert.Null(new LastSaid(job.Scribe.Log).Of([("nobody", WindowFacts.RoughWidth.Name)]));
    }

    [Fact]
    public void WhatWasTakenBackWasSaidByWhoeverTookItBack()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughWidth, "45").Say("W01", WindowFacts.Note, "x");
        job.Say("W01", WindowFacts.RoughWidth, "46");
        Assert.True(job.Scribe.Undo().Ok);
        Assert.Equal(job.Scribe.Log.Changes[^1], Last(job));
        Assert.True(job.Scribe.Redo().Ok);
        Assert.Equal(job.Scribe.Log.Changes[^1], Last(job));
    }

    [Fact]
    public void AddingAnItemSaysThatItIsThere()
    {
        var job = new TestJob().Window("W01");
        var window = job.House.FindTag("W01")!.Id;
        var said = new LastSaid(job.Scribe.Log).Of([(window, Item.RemovedField)]);
        Assert.Contains(said!.Edits, e => e is Edit.Add add && add.Item == window);
    }

    private static Change? Last(TestJob job) => new LastSaid(job.Scribe.Log).Of(Facts.Select(f => (job.House.FindTag("W01")!.Id, f)));
}
