using CsCheck;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class PastHousesTests
{
    /// <summary>
    /// Three laptops' work with removals, undos, redos and merges, gone through back and forth: each time as if the later changes had never been.
    /// </summary>
    [Fact]
    public void AtAnyChangeItIsTheHouseOfTheChangesUpToThere() => Gen.Select(MergeTests.Weeks, Gen.Int).Sample((week, seed) =>
    {
        var logs = MergeTests.Work(week);
        var merged = Merge.Of(Merge.Of(logs[0], logs[1]).Value.Merged, logs[2]).Value.Merged;
        var asked = Enumerable.Range(0, merged.Changes.Count + 1).SelectMany(n => new[] { n, n }).ToArray();
        new Random(seed).Shuffle(asked);
        var past = new PastHouses(apart: 2);
        foreach (var count in asked.Concat(Enumerable.Range(0, merged.Changes.Count + 1)).Concat(Enumerable.Range(0, merged.Changes.Count + 1).Reverse()))
        {
            var log = HouseLog.Of(merged.Changes.Take(count)).Value;
            Assert.Equal(TwoLaptops.Picture(log.House), TwoLaptops.Picture(past.At(merged.Changes, count)));
            Assert.Equal(TwoLaptops.Picture(log.House), TwoLaptops.Picture(merged.At(count)));
        }
    }, iter: 150);

    [Fact]
    public void AnUndoThatCameLaterDoesNotCountYet()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughWidth, "45");
        var width = job.Scribe.Log.Changes[^1];
        job.Scribe.Undo();
        var undo = job.Scribe.Log.Changes[^1];
        job.Scribe.Redo();
        Assert.Equal(Length.FromInches(45), job.Scribe.Log.At(width.Id)!.FindTag("W01")!.RoughWidth);
        Assert.Null(job.Scribe.Log.At(undo.Id)!.FindTag("W01")!.RoughWidth);
        Assert.Equal(Length.FromInches(45), job.House.FindTag("W01")!.RoughWidth);
    }

    [Fact]
    public void WhatAnotherLaptopDidBeforeByTheAgreedOrderCounts()
    {
        var laptops = new TwoLaptops("ada", "bo");
        laptops.Type("bo", WindowFacts.RoughHeight, "60");
        laptops.Type("ada", WindowFacts.Note, "first");
        laptops.Type("ada", WindowFacts.RoughWidth, "45");
        var width = laptops["ada"].Log.Changes[^1];
        Assert.Null(laptops["ada"].Log.At(width.Id)!.FindTag("W01")!.RoughHeight);
        laptops.Take("ada", "bo");
        Assert.Equal(Length.FromInches(60), laptops["ada"].Log.At(width.Id)!.FindTag("W01")!.RoughHeight);
    }

    [Fact]
    public void ADayEndsWithItsLastChangeInTheAgreedOrder()
    {
        var job = new TestJob().Window("W01");
        job.Clock.Advance(TimeSpan.FromDays(1));
        job.Window("W02");
        job.Clock.Advance(TimeSpan.FromDays(2));
        job.Window("W03");
        var log = job.Scribe.Log;
        Assert.Empty(log.At(new DateOnly(2026, 3, 1)).Windows);
        Assert.Equal(["W01"], log.At(new DateOnly(2026, 3, 2)).Windows.Select(w => w.Tag));
        Assert.Equal(["W01", "W02"], log.At(new DateOnly(2026, 3, 4)).Windows.Select(w => w.Tag));
        Assert.Same(job.House, log.At(new DateOnly(2026, 3, 5)));
        Assert.Null(log.At(new ChangeId("nobody", 1)));
    }

    [Fact]
    public void AHouseThatWasLookedAtIsKeptWhileTheHistoryGrows()
    {
        var job = new TestJob().Window("W01");
        var count = job.Scribe.Log.Changes.Count;
        job.Window("W02");
        var then = job.Scribe.Log.At(count);
        job.Window("W03");
        Assert.Same(then, job.Scribe.Log.At(count));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    public void BeforeTheFirstAndAfterTheLastThereIsNone(int beyond)
    {
        var log = new TestJob().Scribe.Log;
        Assert.Throws<ArgumentOutOfRangeException>(() => log.At(beyond < 0 ? -1 : log.Changes.Count + 1));
    }

    [Fact]
    public void AFreezeKnowsWhatWasSeenAndAHistoryWithoutThatGoesByTheAgreedOrder()
    {
        var laptops = new TwoLaptops("ada", "bo");
        laptops.Do("ada", house => SetFact.Typed(house, house.FindTag("W01")!.Units[0].Item, UnitFacts.Colour, "Chalk"));
        laptops.Type("bo", WindowFacts.Mount, "outside");
        laptops.Do("ada", house => SetFact.Typed(house, house.FindTag("W01")!.Units[0].Item, UnitFacts.OrderedOn, "2026-03-03"));
        laptops.Take("ada", "bo");
        var log = laptops["ada"].Log;
        Assert.Null(FrozenUnit.All(log).Single().AsFrozen.Window.Mount);
        var old = HouseLog.Of(log.Changes.Select(c => c with { Edits = [.. c.Edits.Where(e => e is not Edit.Put { Field: "ordered-on#seen" })] })).Value;
        Assert.Equal(Mount.Outside, FrozenUnit.All(old).Single().AsFrozen.Window.Mount);
    }
}
