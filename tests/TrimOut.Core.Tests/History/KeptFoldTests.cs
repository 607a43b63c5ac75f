using CsCheck;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class KeptFoldTests
{
    /// <summary>
    /// Three laptops' work with removals, undos, redos and merges, kept after any change: read again, and gone on with, it is what all changes make.
    /// </summary>
    [Fact]
    public void WhatWasKeptAndGoneOnWithIsWhatTheWholeHistoryMakes()
    {
        var (kept, undone) = (0, 0);
        Gen.Select(MergeTests.Weeks, Gen.Int).Sample((week, seed) =>
        {
            var logs = MergeTests.Work(week);
            var all = Merge.Of(Merge.Of(logs[0], logs[1]).Value.Merged, logs[2]).Value.Merged.Changes;
            var random = new Random(seed);
            var count = random.Next(1, all.Count + 1);
            var log = HouseLog.Of(all.Take(count)).Value;
            if (KeptFold.Write(log) is not { } bytes)
            {
                Assert.NotEmpty(NotCounted.Of(log));
                return;
            }
            var mixed = all.Take(count).ToArray();
            random.Shuffle(mixed);
            var again = KeptFold.Read(bytes, () => mixed);
            Same(log, again);
            foreach (var change in all.Skip(count))
                (log, again) = (log.With(change), again.With(change));
            Same(log, again);
            Interlocked.Increment(ref kept);
            Interlocked.Add(ref undone, log.Undone.Count);
        }, iter: 300);
        Assert.True(kept > 100 && undone > 100, $"{kept} kept, {undone} undone");
    }

    [Fact]
    public void APutValueReadsNoChangeOfBefore()
    {
        var job = Jobs.Walked();
        var kept = KeptFold.Read(KeptFold.Write(job.Scribe.Log)!, () => throw new InvalidOperationException("The changes were read."));
        var scribe = new Scribe(new KeptStore(kept), job.Clock, "Test crew");
        var window = scribe.House.Windows[0];
        Assert.True(SetFact.Typed(scribe.House, window.Item, WindowFacts.Note, "later").Then(scribe.Record).Ok);
        Assert.Equal("later", scribe.House.Windows[0].Item.Get(WindowFacts.Note));
        Assert.Equal(job.Scribe.Log.Changes.Count + 1, scribe.Log.LargestStamp);
        Assert.Empty(NotCounted.Of(scribe.Log));
    }

    [Fact]
    public void AnUndoReadsThem()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughWidth, "45");
        var kept = KeptFold.Read(KeptFold.Write(job.Scribe.Log)!, () => job.Scribe.Log.Changes);
        var scribe = new Scribe(new KeptStore(kept), job.Clock, "Test crew");
        Assert.True(scribe.Undo().Ok);
        Assert.Null(scribe.House.FindTag("W01")!.RoughWidth);
    }

    [Fact]
    public void AHistoryInWhichSomethingDoesNotCountIsNotKept()
    {
        var job = new TestJob().Window("W01");
        var id = new ChangeId("other", 1);
        var log = job.Scribe.Log.With(new Change(id, job.Scribe.Log.LargestStamp + 1, default, "Bo", "w", [new Edit.Put("nowhere", "note", "x", [])]));
        Assert.NotEmpty(NotCounted.Of(log));
        Assert.Null(KeptFold.Write(log));
    }

    [Fact]
    public void WhatComesLaterAndDoesNotCountIsSaid()
    {
        var job = new TestJob().Window("W01");
        var kept = KeptFold.Read(KeptFold.Write(job.Scribe.Log)!, () => job.Scribe.Log.Changes);
        var change = new Change(new ChangeId("other", 1), kept.LargestStamp + 1, default, "Bo", "w",
            [new Edit.Put(job.House.FindTag("W01")!.Id, "rough-width", "900 units", [])]);
        Assert.Equal(NotCounted.Of(job.Scribe.Log.With(change)).ToList(), NotCounted.Of(kept.With(change)).ToList());
        Assert.NotEmpty(NotCounted.Of(kept.With(change)));
    }

    private static void Same(HouseLog expected, HouseLog found)
    {
        Assert.Equal(expected.House.Items.Values.Select(i => (i.Id, i.Kind, i.Under, i.Place)), found.House.Items.Values.Select(i => (i.Id, i.Kind, i.Under,
            i.Place)));
        Assert.All(expected.House.Items.Values, i => Assert.Empty(i.FieldsOtherThanIn(found.House.Items[i.Place])));
        Assert.Equal((expected.Last, expected.Seen.ToString()), (found.Last, found.Seen.ToString()));
        Assert.Equal(NotCounted.Of(expected).ToList(), NotCounted.Of(found).ToList());
        Assert.Equal(expected.Changes.Select(ChangeJson.Write), found.Changes.Select(ChangeJson.Write));
        Assert.Equal(expected.Changes.Where(c => expected.IsInForce(c.Id)).Select(c => c.Id), expected.Changes.Where(c => found.IsInForce(c.Id)).Select(c =>
            c.Id));
    }

    private sealed class KeptStore(HouseLog kept) : IHouseStore
    {
        public string Where => "memory";

        public string Device => "laptop";

        public string? ReadOnlyBecause => null;

        public IReadOnlyList<Change> Opened => throw new InvalidOperationException("The changes were read.");

        public HouseLog Kept => kept;

        public void Append(Change change) { }

        public void Take(IReadOnlyList<Change> changes) { }
    }
}
