using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

/// <summary>Whatever a history holds that does not count here is told by its change, who made it and why; what counts is not.</summary>
public class NotCountedTests
{
    private readonly TestJob _job = new TestJob().Window("W01");

    private string Window => _job.House.FindTag("W01")!.Id;

    private HouseLog With(params Edit[] edits) => With(_job.Scribe.Log, 1, edits);

    private static HouseLog With(HouseLog log, long number, params Edit[] edits) =>
        log.With(new Change(new ChangeId("later", number), log.LargestStamp + 1, new DateTimeOffset(2026, 3, 4, 8, 0, 0, TimeSpan.Zero), "Bo", "w",
            [.. edits]));

    private static Edit.Put Put(string item, string field, string? value) => new(item, field, value, []);

    private void Told(string why, params Edit[] edits) => Assert.Equal($"Change later:1, 2026-03-04 by Bo: {why}", Assert.Single(NotCounted.Of(With(edits))));

    private void Counts(params Edit[] edits) => Assert.Empty(NotCounted.Of(With(edits)));

    [Fact]
    public void AHouseThatThisVersionWroteCountsWhole() => Assert.Empty(NotCounted.Of(Jobs.Roughed().Scribe.Log));

    [Fact]
    public void AnEditOfANewerVersionIsKept() =>
        Told("an edit that was written by a newer TrimOut. It is kept, and does not count here.", new Edit.Unread("{\"later\":1}"));

    [Fact]
    public void WhatIsAddedToNothingIsTold()
    {
        Told("a unit was added to nowhere, which isn't there.", new Edit.Add("u", ItemKind.Unit, "nowhere"));
        Counts(new Edit.Add("u", ItemKind.Unit, Window));
    }

    [Fact]
    public void WhatIsUndoneAndNotThereIsTold()
    {
        Told("change office:77 was undone, which isn't there.", new Edit.Undo(new ChangeId("office", 77)));
        Counts(new Edit.Undo(_job.Scribe.Log.Changes[^1].Id));
    }

    [Fact]
    public void WhatIsPutToNothingIsTold()
    {
        Told("note was put to nowhere, which isn't there.", Put("nowhere", "note", "x"));
        Counts(Put(Window, "note", "x"));
    }

    [Fact]
    public void ADetailOfANewerVersionIsTold() =>
        Told("W01 has shade \"red\". No detail of this version is called that: it is kept, and does not count here.", Put(Window, "shade", "red"));

    [Fact]
    public void AValueThatCanNotBeReadIsTold()
    {
        var told = Assert.Single(NotCounted.Of(With(Put(Window, "rough-width", "900 units"))));
        Assert.StartsWith("Change later:1, 2026-03-04 by Bo: W01: Rough width can't be \"900 units\". ", told, StringComparison.Ordinal);
        Assert.Equal(told, Assert.Single(NotCounted.Of(With(Put(Window, "rough-width", "900 units"), Put(Window, "note", "x")))));
    }

    [Fact]
    public void AValueThatNamesNothingIsTold()
    {
        Told("W01: Room is nowhere, which isn't there.", Put(Window, "room", "nowhere"));
        Counts(Put(Window, "room", _job.House.Rooms.First().Id));
    }

    [Fact]
    public void AKeyThatNamesNothingIsToldAndAStepIsNoKeyOfThatSort()
    {
        var remote = _job.Add(ItemKind.Remote, "R1").House.Remotes.Single().Id;
        Told("R1: Moves is about nowhere, which isn't there.", Put(remote, "moves:nowhere", "yes"));
        Counts(Put(remote, $"moves:{_job.Unit("W01").Id}", "yes"));
        Assert.Empty(NotCounted.Of(_job.Mark("W01", "clicked-in").Scribe.Log));
    }

    [Fact]
    public void WhatStandsBesideAValueAndNotesOfTheProgramCount()
    {
        Counts(Put(_job.Run("W01").Id, "first-loop#meter", "M1"));
        Counts(Put(Window, Item.RemovedField, "later:1"));
        Counts(Put(_job.Unit("W01").Id, "steps-version", "2"));
    }

    [Fact]
    public void WhatStandsBesideNoDetailThereIsIsTold() =>
        Told("W01 has shade#meter \"M1\". No detail of this version is called that: it is kept, and does not count here.", Put(Window, "shade#meter", "M1"));

    [Fact]
    public void WhatWasTakenAwayOrReplacedIsNotTold()
    {
        Counts(Put(Window, "shade", null));
        var red = With(Put(Window, "shade", "red"));
        var id = new ChangeId("later", 1);
        Assert.Empty(NotCounted.Of(With(red, 2, new Edit.Put(Window, "shade", null, [id]))));
        Assert.StartsWith("Change later:2,", Assert.Single(NotCounted.Of(With(red, 2, new Edit.Put(Window, "shade", "blue", [id])))), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasUndoneIsNotTold() =>
        Assert.Empty(NotCounted.Of(With(With(Put(Window, "shade", "red")), 2, new Edit.Undo(new ChangeId("later", 1)))));

    [Fact]
    public void EachEditIsToldByItselfInTheOrderOfTheHistory()
    {
        var log = With(With(Put("x", "note", "1"), Put("y", "note", "2")), 2, Put("z", "note", "3"));
        Assert.Equal(["later:1 x", "later:1 y", "later:2 z"], NotCounted.Of(log).Select(t => $"{t.Split(' ', ',')[1]} {t.Split("put to ")[1][0]}"));
    }
}
