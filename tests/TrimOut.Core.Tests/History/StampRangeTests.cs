using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

/// <summary>Counters near their end, which nobody can come to by working.</summary>
public class StampRangeTests
{
    private static Scribe House(params Change[] more)
    {
        var scribe = new Scribe(new MemoryStore("office"), TimeProvider.System, "Office");
        Assert.True(CommonPracticeKit.NewHouse("Elm", DisplayUnits.Inches).Then(scribe.Record).Ok);
        return more.Length == 0 ? scribe : new Scribe(new MemoryStore("office", [.. scribe.Log.Changes, .. more]), TimeProvider.System, "Office");
    }

    private static Change Late(string device, long number, long stamp) => new(new ChangeId(device, number), stamp, default, "b", "w", []);

    [Theory]
    [InlineData(1, 2_000_000_000)]
    [InlineData(1, Change.LastStamp)]
    [InlineData(2_000_000_000, 2)]
    public void AMergeDoesNotTakeInAJump(long number, long stamp)
    {
        var mine = House();
        var theirs = HouseLog.Of(mine.Log.Changes.Add(Late("other", number, stamp))).Value;
        Assert.Contains("so many changes can't be missing", Merge.Of(mine.Log, theirs).Reason, StringComparison.Ordinal);
    }

    // The new house is change 1 of the office; a thousand million after it is the last that is taken in.
    [Theory]
    [InlineData(900, 900)]
    [InlineData(1_000_000_000, 2)]
    [InlineData(1, 1_000_000_001)]
    public void AGapOfSomeLostChangesIsTakenIn(long number, long stamp)
    {
        var mine = House();
        Assert.True(Merge.Of(mine.Log, HouseLog.Of(mine.Log.Changes.Add(Late("other", number, stamp))).Value).Ok);
        Assert.False(Merge.Of(mine.Log, HouseLog.Of(mine.Log.Changes.Add(Late("other", number + 1_000_000_000, stamp + 1_000_000_000))).Value).Ok);
    }

    [Theory]
    [InlineData("other", 1, Change.LastStamp)]
    [InlineData("office", ChangeId.Last, 5)]
    public void AHouseAtTheEndOfItsNumbersSaysSoAndDoesNotBreak(string device, long number, long stamp)
    {
        var scribe = House(Late(device, number, stamp));
        Assert.Contains("has the last number there is", AddItems.Window(scribe.House, "W01", null).Then(scribe.Record).Reason, StringComparison.Ordinal);
    }
}
