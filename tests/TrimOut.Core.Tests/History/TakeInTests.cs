using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

/// <summary>Another copy is taken into a house that is open, and taken back.</summary>
public class TakeInTests
{
    private readonly MemoryStore _store;
    private readonly Scribe _mine;
    private readonly Scribe _theirs;

    public TakeInTests()
    {
        var start = new TestJob().Window("W01").Window("W02").Scribe.Log.Changes;
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 3, 3, 8, 0, 0, TimeSpan.Zero));
        _store = new MemoryStore("mine", start);
        _mine = new Scribe(_store, clock, "Ada");
        _theirs = new Scribe(new MemoryStore("theirs", start), clock, "Bo");
    }

    private static void Type(Scribe scribe, string tag, Fact fact, string typed)
    {
        var item = fact.Subject == ItemKind.Window ? scribe.House.FindTag(tag)!.Item : scribe.House.Units.Single(u => u.Tag == tag).Item;
        Assert.True(SetFact.Typed(scribe.House, item, fact, typed).Then(scribe.Record).Ok);
    }

    private Merge Looked => Merge.Of(_mine.Log, _theirs.Log).Value;

    [Fact]
    public void WhatOnlyTheOtherHasIsSavedAndIsInTheHouse()
    {
        Type(_mine, "W01", WindowFacts.RoughWidth, "36");
        Type(_theirs, "W02", WindowFacts.RoughWidth, "40");
        Type(_theirs, "W02", UnitFacts.LeadSide, "left");
        var came = _mine.TakeIn(Looked).Value;
        Assert.Equal(["Bo", "Bo"], came.New.Select(c => c.By));
        Assert.Equal(came.New, _store.Saved.TakeLast(2));
        Assert.Equal(Length.FromInches(40), _mine.House.FindTag("W02")!.RoughWidth);
        Assert.Equal(Length.FromInches(36), _mine.House.FindTag("W01")!.RoughWidth);
        Assert.Equal(TwoLaptops.Picture(HouseLog.Of(_mine.Log.Changes).Value), TwoLaptops.Picture(_mine.Log));
    }

    [Fact]
    public void WhatIsDoneAfterItComesAfterItInTheOrder()
    {
        for (var n = 30; n < 40; n++)
            Type(_theirs, "W02", WindowFacts.RoughWidth, $"{n}");
        _mine.TakeIn(Looked);
        Type(_mine, "W02", WindowFacts.RoughWidth, "50");
        Assert.Equal(_store.Saved[^1].Id, _mine.Log.Changes[^1].Id);
        Assert.Single(_mine.House.FindTag("W02")!.Item.Heads(WindowFacts.RoughWidth.Name));
    }

    [Fact]
    public void WhatWasDoneHereSinceItWasLookedAtStays()
    {
        Type(_theirs, "W02", WindowFacts.RoughWidth, "40");
        var looked = Looked;
        Type(_mine, "W01", WindowFacts.RoughWidth, "36");
        Assert.True(_mine.TakeIn(looked).Ok);
        Assert.Equal(Length.FromInches(36), _mine.House.FindTag("W01")!.RoughWidth);
        Assert.Equal(Length.FromInches(40), _mine.House.FindTag("W02")!.RoughWidth);
    }

    [Fact]
    public void TakingItBackLeavesTheHouseAsItWasAndRedoBringsItBack()
    {
        Type(_mine, "W01", WindowFacts.RoughWidth, "36");
        Type(_theirs, "W01", WindowFacts.RoughWidth, "37");
        Assert.True(AddItems.Window(_theirs.House, "W03", null) is var more && more.Then(_theirs.Record).Ok);
        Assert.True(_theirs.Undo().Ok);
        Assert.True(_theirs.Redo().Ok);
        var before = Values(_mine.House);
        var came = _mine.TakeIn(Looked).Value;
        var taken = Values(_mine.House);
        Assert.NotEqual(before, taken);
        Assert.True(_mine.TakeBack(came.New).Ok);
        Assert.Equal(before, Values(_mine.House));
        Assert.StartsWith("Redo: ", _mine.Redo().Value.What, StringComparison.Ordinal);
        Assert.Equal(taken, Values(_mine.House));
    }

    [Fact]
    public void WhatIsTakenBackStaysSoWhenTheCopyIsTakenInAgain()
    {
        Type(_theirs, "W02", WindowFacts.RoughWidth, "40");
        _mine.TakeBack(_mine.TakeIn(Looked).Value.New);
        Assert.Empty(Looked.New);
        Assert.Null(_mine.House.FindTag("W02")!.RoughWidth);
        Assert.False(_mine.TakeBack(_theirs.Log.Changes.TakeLast(1).ToList()).Ok);
    }

    [Fact]
    public void AFailedSaveTakesNothingIn()
    {
        Type(_theirs, "W02", WindowFacts.RoughWidth, "40");
        _store.FailWith = "The disk is full.";
        Assert.Equal("The disk is full.", _mine.TakeIn(Looked).Reason);
        Assert.Null(_mine.House.FindTag("W02")!.RoughWidth);
        _store.FailWith = null;
        _store.ReadOnlyBecause = "you chose only to look.";
        Assert.Contains("only to look", _mine.TakeIn(Looked).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void AnExtentTellsWhatCameSinceAlsoWhatAnotherLaptopHadDoneBefore()
    {
        Type(_theirs, "W02", WindowFacts.RoughWidth, "40");
        Type(_mine, "W01", WindowFacts.RoughWidth, "36");
        var extent = _mine.Log.Extent;
        Assert.Empty(_mine.Log.Since(extent));
        _mine.TakeIn(Looked);
        Assert.Equal(["Bo"], _mine.Log.Since(extent).Select(c => c.By));
        Assert.Equal(_mine.Log.Changes.Count, _mine.Log.Since("not an extent").Count());
    }

    private static string Values(House house) => string.Join("\n", house.Items.Values.Where(house.IsPresent).OrderBy(i => i.Id, StringComparer.Ordinal)
        .Select(i => $"{i.Id} {string.Join(" ", i.Fields.Where(f => f.Value.Any(h => h.Stored is not null)).OrderBy(f => f.Key, StringComparer.Ordinal)
            .Select(f => $"{f.Key}={string.Join("|", f.Value.Select(h => h.Stored))}"))}"));
}
