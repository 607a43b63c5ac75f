using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

/// <summary>What whoever saves is told, and what a change holds once it is saved.</summary>
public class ScribeTests
{
    private static readonly DateTimeOffset Morning = new(2026, 3, 3, 23, 30, 0, TimeSpan.Zero);

    private readonly MemoryStore _store = new("van", new TestJob().Window("W01").Scribe.Log.Changes);
    private readonly FakeTimeProvider _clock = new(Morning);
    private readonly Scribe _scribe;

    public ScribeTests() => _scribe = new Scribe(_store, _clock, "Ada");

    private Result<Change> Note(string note) => SetFact.Typed(_scribe.House, _scribe.House.FindTag("W01")!.Item, WindowFacts.Note, note).Then(_scribe.Record);

    /// <summary>What was done last is told first, for it is what is looked for.</summary>
    [Fact]
    public void ChangesThatAreTakenBackTogetherAreNamedFromTheLastOn()
    {
        var (one, two, three) = (Note("a").Value, Note("b").Value, Note("c").Value);
        Assert.Equal($"Undo: {three.What}; {two.What}; {one.What}", _scribe.Undo([one, two]).Value.What);
    }

    [Fact]
    public void AnEmptyDraftSavesNothing()
    {
        Assert.Equal("There is nothing to save in that.", _scribe.Record(new Draft("nothing")).Reason);
        Assert.Empty(_store.Saved);
    }

    [Fact]
    public void WhereNothingMayBeSavedItSaysWhy()
    {
        _store.ReadOnlyBecause = "you chose only to look.";
        Assert.Equal("Not saved: you chose only to look.", Note("x").Reason);
        Assert.Empty(_store.Saved);
    }

    [Fact]
    public void AChangeThatWasNotSavedIsNotInTheHouseAndTheNextOneHasItsNumber()
    {
        _store.FailWith = "The disk is full.";
        var before = _scribe.Log;
        Assert.Equal("The disk is full.", Note("lost").Reason);
        Assert.Equal("The disk is full.", _scribe.NotSaved);
        Assert.Equal(StoreFault.Disk, _scribe.NotSavedFault);
        Assert.Same(before, _scribe.Log);
        Assert.Null(_scribe.LastSaved);
        _store.FailWith = null;
        Assert.Equal(new ChangeId("van", 1), Note("kept").Value.Id);
        Assert.Null(_scribe.NotSaved);
        Assert.Equal(Morning, _scribe.LastSaved);
        Assert.Equal("kept", _scribe.House.FindTag("W01")!.Item.Get(WindowFacts.Note));
    }

    [Fact]
    public void ChangesOfOneLaptopFollowOnOneAnotherAlsoWhenItIsOpenedAgain()
    {
        Assert.Equal(["van:1", "van:2"], new[] { Note("a"), Note("b") }.Select(c => c.Value.Id.ToString()));
        var stamps = _store.Saved.Select(c => c.Stamp).ToList();
        Assert.Equal(_scribe.Log.Changes[^3].Stamp + 1, stamps[0]);
        Assert.Equal(stamps[0] + 1, stamps[1]);
        var again = new Scribe(new MemoryStore("van", _scribe.Log.Changes), _clock, "Bo");
        var saved = SetFact.Typed(again.House, again.House.FindTag("W01")!.Item, WindowFacts.Note, "c").Then(again.Record).Value;
        Assert.Equal(("van:3", "Bo"), (saved.Id.ToString(), saved.By));
    }

    [Fact]
    public void TodayIsTheDayWhereTheLaptopIs()
    {
        Assert.Equal(new DateOnly(2026, 3, 3), _scribe.Today);
        _clock.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("east", TimeSpan.FromHours(1), "east", "east"));
        Assert.Equal(new DateOnly(2026, 3, 4), _scribe.Today);
    }

    [Fact]
    public void AHistoryThatIsNoneIsNotOpened()
    {
        var change = _scribe.Log.Changes[0];
        var refused = Assert.Throws<HouseStoreException>(() => new Scribe(new MemoryStore("van", [change, change with { By = "Somebody" }]), _clock, "Ada"));
        Assert.Contains("twice with different contents", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WithNothingDoneHereThereIsNothingToTakeBack()
    {
        Assert.Null(_scribe.UndoNext);
        Assert.Null(_scribe.RedoNext);
        Assert.Equal("There is nothing to undo on this laptop.", _scribe.Undo().Reason);
        Assert.Equal("There is nothing to redo: something else was done since, or nothing was undone.", _scribe.Redo().Reason);
        Assert.Empty(_store.Saved);
    }

    [Fact]
    public void UndoGoesBackChangeByChangeAndRedoForthAgain()
    {
        Note("a");
        Note("b");
        Assert.Equal("b", Undone());
        Assert.Equal("a", Undone());
        Assert.False(_scribe.Undo().Ok);
        Assert.True(_scribe.Redo().Ok);
        Assert.Equal("a", NoteNow());
        Assert.True(_scribe.Redo().Ok);
        Assert.Equal("b", NoteNow());
        Assert.False(_scribe.Redo().Ok);
        string? Undone()
        {
            var before = NoteNow();
            Assert.True(_scribe.Undo().Ok);
            return before;
        }
    }

    [Fact]
    public void WhatIsDoneAfterAnUndoEndsItsRedo()
    {
        Note("a");
        Assert.True(_scribe.Undo().Ok);
        Assert.NotNull(_scribe.RedoNext);
        Note("b");
        Assert.Null(_scribe.RedoNext);
        Assert.False(_scribe.Redo().Ok);
        Assert.Equal("b", NoteNow());
    }

    [Fact]
    public void UndoAndRedoSayWhatTheyTakeBackAndBring()
    {
        var (one, two) = (Note("a").Value, Note("b").Value);
        Assert.Equal($"Undo: {two.What}; {one.What}", _scribe.Undo([one]).Value.What);
        Assert.Equal($"Redo: {two.What}; {one.What}", _scribe.Redo().Value.What);
        Assert.Equal("b", NoteNow());
        Assert.Equal("nothing of the sort", Scribe.WithoutUndo("nothing of the sort"));
        Assert.Equal("Note", Scribe.WithoutUndo("Undo: Note"));
    }

    [Fact]
    public void OfSeveralThatAreTakenBackThoseThatCountNoMoreAreLeftOut()
    {
        var one = Note("a").Value;
        Assert.True(_scribe.Undo().Ok);
        Note("b");
        Assert.Single(_scribe.Undo([one]).Value.Edits);
        Assert.Null(NoteNow());
    }

    [Fact]
    public void WhatIsTakenBackOfAnotherCopyIsCountedAndSaysWhose()
    {
        var theirs = new Scribe(new MemoryStore("office", _scribe.Log.Changes), _clock, "Bo");
        foreach (var note in new[] { "a", "b" })
            Assert.True(SetFact.Typed(theirs.House, theirs.House.FindTag("W01")!.Item, WindowFacts.Note, note).Then(theirs.Record).Ok);
        var came = _scribe.TakeIn(Merge.Of(_scribe.Log, theirs.Log).Value).Value;
        Assert.Equal(_clock.GetUtcNow(), _scribe.LastSaved);
        Assert.Equal("Undo: 2 changes taken in from Bo", _scribe.TakeBack(came.New).Value.What);
        Assert.Null(NoteNow());
        Assert.Equal("Nothing that was taken in counts any more.", _scribe.TakeBack(came.New).Reason);
        Assert.Equal("Nothing that was taken in counts any more.", _scribe.TakeBack([]).Reason);
    }

    [Fact]
    public void ACopyWithNothingNewSavesNothing()
    {
        var merge = Merge.Of(_scribe.Log, HouseLog.Of(_scribe.Log.Changes).Value).Value;
        var before = _scribe.Log;
        Assert.True(_scribe.TakeIn(merge).Ok);
        Assert.Same(before, _scribe.Log);
        Assert.Null(_scribe.LastSaved);
    }

    // Its own changes of another copy, as when a laptop got its house from a backup: no number is given twice.
    [Fact]
    public void AfterItsOwnChangesCameBackTheNextNumberIsAfterThem()
    {
        var other = new Scribe(new MemoryStore("van", _scribe.Log.Changes), _clock, "Ada");
        foreach (var note in new[] { "a", "b" })
            Assert.True(SetFact.Typed(other.House, other.House.FindTag("W01")!.Item, WindowFacts.Note, note).Then(other.Record).Ok);
        Assert.True(_scribe.TakeIn(Merge.Of(_scribe.Log, other.Log).Value).Ok);
        Assert.Equal(new ChangeId("van", 3), Note("c").Value.Id);
    }

    [Fact]
    public void WhatIsAddedIsNamedAfterItsChangeAndPutsOfTheSameChangeAreAboutIt()
    {
        var saved = AddItems.Window(_scribe.House, "W09", null).Then(_scribe.Record).Value;
        var added = saved.Edits.OfType<Edit.Add>().ToList();
        Assert.Equal("van-1-0", added[0].Item);
        Assert.Equal(ItemKind.Window, added[0].Kind);
        Assert.Equal("van-1-0", added.Single(a => a.Kind == ItemKind.Unit).Under);
        Assert.Contains(saved.Edits.OfType<Edit.Put>(), p => p is { Item: "van-1-0", Field: "tag", Value: "W09" });
    }

    [Fact]
    public void AValueIsPutOverThoseThatWereSeen()
    {
        var first = Note("a").Value;
        Assert.Empty(first.Edits.OfType<Edit.Put>().Single().Over);
        Assert.Equal<ChangeId>([first.Id], Note("b").Value.Edits.OfType<Edit.Put>().Single().Over);
        var taken = Note("").Value.Edits.OfType<Edit.Put>().Single();
        Assert.Null(taken.Value);
        Assert.Equal<ChangeId>([new ChangeId("van", 2)], taken.Over);
    }

    [Fact]
    public void ARemovalSaysWhatWasSeenAndADayOfOrderDoesBesideIt()
    {
        var seen = _scribe.Log.Extent;
        var removed = RemoveItems.Remove(_scribe.House, _scribe.House.FindTag("W01")!.Item).Then(_scribe.Record).Value;
        Assert.Equal(seen, removed.Edits.OfType<Edit.Put>().Single(p => p.Field == Item.RemovedField).Value);
        Assert.True(_scribe.Undo().Ok);
        seen = _scribe.Log.Extent;
        var unit = _scribe.House.FindTag("W01")!.Units[0].Item;
        var ordered = SetFact.Typed(_scribe.House, unit, UnitFacts.OrderedOn, "2026-03-03").Then(_scribe.Record).Value;
        Assert.Equal(seen, ordered.Edits.OfType<Edit.Put>().Single(p => p.Field == "ordered-on#seen").Value);
        var cleared = SetFact.Typed(_scribe.House, _scribe.House.Find(unit.Id)!, UnitFacts.OrderedOn, "").Then(_scribe.Record).Value;
        Assert.DoesNotContain(cleared.Edits.OfType<Edit.Put>(), p => p.Field == "ordered-on#seen");
    }

    private string? NoteNow() => _scribe.House.FindTag("W01")!.Item.Get(WindowFacts.Note);
}
