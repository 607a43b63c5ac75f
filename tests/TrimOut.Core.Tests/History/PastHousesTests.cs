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

    /// <summary>As nobody's program writes it: what comes back with what it belongs to is added once more.</summary>
    [Fact]
    public void AnItemThatComesBackAndIsAddedAgainIsThereOnce()
    {
        Change By(string device, int number, long stamp, params Edit[] edits) =>
            new(new ChangeId(device, number), stamp, DateTimeOffset.UnixEpoch, "Ash", "w", [.. edits]);
        var log = HouseLog.Of([
            By("a", 1, 1, new Edit.Add("w", ItemKind.Window, House.RootId), new Edit.Add("u", ItemKind.Unit, "w")),
            By("a", 2, 2, new Edit.Undo(new ChangeId("a", 1))), By("b", 1, 3, new Edit.Add("u", ItemKind.Unit, "w"))]).Value;
        Assert.Equal([House.RootId, "w", "u"], log.House.Items.Values.Select(i => i.Id));
    }

    /// <summary>
    /// Logs that grow out of one another like the twigs of a tree, with undos of what is there, of what is not there yet and of undos: every house of
    /// every log is the plain fold of its changes up to there, whatever was asked of the others before.
    /// </summary>
    [Fact]
    public void LogsThatBranchOffOneAnotherHaveTheirOwnHousesOfThePast() => Gen.Select(Twigs.Array[1, 60], Gen.Int).Sample((twigs, seed) =>
    {
        var job = new TestJob().Window("W01");
        var window = job.House.Windows[0].Id;
        var (logs, random) = (new List<HouseLog> { job.Scribe.Log }, new Random(seed));
        foreach (var (from, device, undoes, value) in twigs)
        {
            var log = logs[from % logs.Count];
            var id = new ChangeId($"d{device}", 1 + log.Changes.Count(c => c.Id.Device == $"d{device}"));
            // What comes next on some laptop may be undone before it is there.
            var known = log.Changes.Skip(2).Select(c => c.Id).Append(new ChangeId($"d{value % 3}", 1 + value % 5)).ToList();
            Edit edit = undoes ? new Edit.Undo(known[value % known.Count]) : new Edit.Put(window, WindowFacts.Note.Name, $"{id} {value}", []);
            logs.Add(log.With(new Change(id, log.LargestStamp + 1, DateTimeOffset.UnixEpoch, "Twig", "twig", [edit])));
            foreach (var asked in Enumerable.Range(0, 3).Select(_ => logs[random.Next(logs.Count)]).Append(logs[^1]))
            {
                var count = random.Next(asked.Changes.Count + 1);
                Assert.Equal(TwoLaptops.Picture(Fold.All([.. asked.Changes.Take(count)]).House), TwoLaptops.Picture(asked.At(count)));
            }
            Assert.Equal(TwoLaptops.Picture(Fold.All(logs[^1].Changes).House), TwoLaptops.Picture(logs[^1].House));
        }
    }, iter: 40, threads: 1);

    private static readonly Gen<(int From, int Device, bool Undoes, int Value)> Twigs =
        Gen.Select(Gen.Int[0, 99], Gen.Int[0, 2], Gen.Int[0, 3].Select(n => n == 0), Gen.Int[0, 99]);

    [Fact]
    public void TwoLogsThatFollowOnOneHaveEachTheirOwnPast()
    {
        var log = new TestJob().Window("W01").Scribe.Log;
        var window = log.House.Windows[0].Id;
        HouseLog Noted(string note) => log.With(Note(log, 1, note)).With(Note(log, 2, "last"));
        var (one, other) = (Noted("one"), Noted("other"));
        Assert.Equal(("one", "other"), (NoteIn(one), NoteIn(other)));
        string? NoteIn(HouseLog of) => of.At(of.Changes.Count - 1).FindTag("W01")!.Item.Get(WindowFacts.Note);
        Change Note(HouseLog on, int more, string note) => new(new ChangeId("d", more), on.LargestStamp + more, DateTimeOffset.UnixEpoch, "x", "note",
            [new Edit.Put(window, WindowFacts.Note.Name, note, [])]);
    }

    [Fact]
    public void WhatWasUndoneBeforeItCameIsUndone()
    {
        var log = new TestJob().Window("W01").Scribe.Log;
        var (id, window) = (new ChangeId("late", 1), log.House.Windows[0].Id);
        log = log.With(Next("undo", new Edit.Undo(id), new ChangeId("early", 1)));
        log = log.With(Next("note", new Edit.Put(window, WindowFacts.Note.Name, "undone", []), id));
        Assert.Null(log.House.FindTag("W01")!.Item.Get(WindowFacts.Note));
        log = log.With(Next("colour", new Edit.Put(window, WindowFacts.Mount.Name, "inside", []), new ChangeId("late", 2)));
        var past = new PastHouses(apart: 1);
        for (var count = 0; count <= log.Changes.Count; count++)
            Assert.Null(past.At(log.Changes, count).FindTag("W01")?.Item.Get(WindowFacts.Note));
        Change Next(string what, Edit edit, ChangeId by) => new(by, log.LargestStamp + 1, DateTimeOffset.UnixEpoch, "x", what, [edit]);
    }

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
