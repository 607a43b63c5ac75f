using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class HouseLogTests
{
    private static readonly HouseLog Log = new TestJob().Window("W01").Scribe.Log;

    private static Change At(string device, long number, long stamp, params Edit[] edits) =>
        new(new ChangeId(device, number), stamp, new DateTimeOffset(2026, 3, 3, 8, 0, 0, TimeSpan.Zero), "Bo", "w", [.. edits]);

    private static Change Next(HouseLog log, params Edit[] edits) => At("van", log.LastOf("van") + 1, log.LargestStamp + 1, edits);

    private static Edit.Put Note(string note) => new(Log.House.FindTag("W01")!.Id, WindowFacts.Note.Name, note, []);

    [Fact]
    public void AnEmptyHistoryHasTheHouseItselfAndNoLastChange()
    {
        Assert.Empty(HouseLog.Empty.Changes);
        Assert.Equal([House.RootId], HouseLog.Empty.House.Items.Values.Select(i => i.Id));
        Assert.Equal((0, 0, 0, ""), (HouseLog.Empty.LargestStamp, HouseLog.Empty.LastOf("van"), HouseLog.Empty.SinceFolded, HouseLog.Empty.Extent));
        Assert.Null(HouseLog.Empty.Jump);
        Assert.Null(HouseLog.Empty.Mixed);
        Assert.Equal(new ChangeId("van", 1), HouseLog.Empty.With(At("van", 1, 1)).Changes.Single().Id);
    }

    [Fact]
    public void TwoHousesInOneHistoryAreTold()
    {
        var mixed = HouseLog.Of([At("a", 1, 1), At("b", 1, 1), At("b", 2, 2)]).Value;
        Assert.Equal("Change a:1 and change b:1 both begin a house: these are the histories of two houses, and no house is made of both.", mixed.Mixed);
        Assert.Null(HouseLog.Of([At("a", 1, 1), At("a", 2, 2), At("b", 1, 2)]).Value.Mixed);
        Assert.Null(HouseLog.Of([At("a", 1, 1)]).Value.Mixed);
    }

    [Fact]
    public void AJumpNamesTheChangeAndTheOneBeforeIt()
    {
        Assert.Equal("Change b:1 has the stamp 1000000002, and the one before it 1: so many changes can't be missing between the two.",
            HouseLog.Of([At("a", 1, 1), At("b", 1, 1_000_000_002)]).Value.Jump);
        Assert.Equal("Change a:1000000004 comes after number 3 of that device: so many changes can't be missing between the two.",
            HouseLog.Of([At("a", 3, 1), At("a", 1, 2), At("a", 1_000_000_004, 3)]).Value.Jump);
        Assert.Null(HouseLog.Of([At("a", 3, 1), At("a", 1, 2), At("a", 1_000_000_003, 3)]).Value.Jump);
    }

    [Fact]
    public void AChangeThatIsThereAlreadyIsNotAddedOnceMore()
    {
        var twice = Assert.Throws<ArgumentException>(() => Log.With(Log.Changes[^1]));
        Assert.StartsWith($"Change {Log.Changes[^1].Id} is there already.", twice.Message, StringComparison.Ordinal);
        var log = Log.With(Next(Log, Note("x")));
        Assert.Throws<ArgumentException>(() => log.With(log.Changes[^1]));
    }

    [Fact]
    public void WhatComesLateTakesItsPlaceInTheAgreedOrder()
    {
        var log = Log.With(At("van", 1, Log.LargestStamp + 2, Note("last")));
        Assert.Equal((Log.LargestStamp + 2, Log.SinceFolded + 1), (log.LargestStamp, log.SinceFolded));
        var late = log.With(At("office", 1, Log.LargestStamp + 1, Note("first")));
        Assert.Equal(["office:1", "van:1"], late.Changes.TakeLast(2).Select(c => c.Id.ToString()));
        Assert.Equal("last", late.House.FindTag("W01")!.Item.Get(WindowFacts.Note));
        Assert.Equal((0, log.LargestStamp), (late.SinceFolded, late.LargestStamp));
    }

    // Of two changes with one stamp the device that comes first in the order of its signs comes first, and of one device the lower number.
    [Fact]
    public void WhoeverPutsLastByTheAgreedOrderIsShown()
    {
        var (b, a) = (At("b", 1, Log.LargestStamp + 1, Note("of b")), At("a", 1, Log.LargestStamp + 1, Note("of a")));
        Assert.Equal("of b", Log.With(b).With(a).House.FindTag("W01")!.Item.Get(WindowFacts.Note));
        Assert.Equal("of b", Log.With(a).With(b).House.FindTag("W01")!.Item.Get(WindowFacts.Note));
        var second = At("b", 2, Log.LargestStamp + 1, Note("second of b"));
        Assert.Equal("second of b", Log.With(second).With(b).House.FindTag("W01")!.Item.Get(WindowFacts.Note));
    }

    [Fact]
    public void AChangeThatIsThereTwiceWithTheSameContentsCountsOnce()
    {
        var change = At("van", 1, Log.LargestStamp + 1, Note("x"));
        var log = HouseLog.Of([.. Log.Changes, change, change with { What = "w" }, change]).Value;
        Assert.Equal(Log.Changes.Count + 1, log.Changes.Count);
        Assert.Equal("Change van:1 is there twice with different contents. Neither was picked.",
            HouseLog.Of([.. Log.Changes, change, change with { What = "else" }]).Reason);
    }

    [Fact]
    public void AChangeIsInForceUntilItIsUndoneAndOneThatIsNotThereNever()
    {
        var noted = Log.With(Next(Log, Note("x")));
        var undone = noted.With(Next(noted, new Edit.Undo(new ChangeId("van", 1))));
        Assert.True(noted.IsInForce(new ChangeId("van", 1)));
        Assert.False(noted.IsInForce(new ChangeId("van", 2)));
        Assert.False(undone.IsInForce(new ChangeId("van", 1)));
        Assert.True(undone.IsInForce(new ChangeId("van", 2)));
    }

    [Fact]
    public void TheExtentIsTheLastNumberOfEachDevice()
    {
        var log = HouseLog.Of([At("b", 1, 1), At("a", 2, 2), At("a", 1, 3)]).Value;
        Assert.Equal("a:2 b:1", log.Extent);
        Assert.Equal((2, 1, 0), (log.LastOf("a"), log.LastOf("b"), log.LastOf("c")));
        Assert.Equal("a:3 b:1 c:1", log.With(At("a", 3, 4)).With(At("c", 1, 5)).Extent);
        Assert.Equal(["b:1"], log.Since("a:2").Select(c => c.Id.ToString()));
        Assert.Equal(3, log.Since("a:2 b").Count());
    }

    [Fact]
    public void ADayHasSoManyChangesAsWereMadeUpToItsEnd()
    {
        var (first, second) = (At("a", 1, 1), At("a", 2, 2) with { SaidAt = new DateTimeOffset(2026, 3, 4, 23, 59, 0, TimeSpan.Zero) });
        var log = HouseLog.Of([first, second]).Value;
        Assert.Equal([0, 1, 2, 2], new[] { 2, 3, 4, 5 }.Select(day => log.CountAt(new DateOnly(2026, 3, day))));
    }
}
