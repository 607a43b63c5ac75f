using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class FrozenUnitTests
{
    [Fact]
    public void AUnitIsFrozenAsItStoodWhenItsDayWasPutAndTheLastDayCounts()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.Colour, "Stone");
        Assert.Empty(FrozenUnit.All(job.Scribe.Log));
        job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Say("W01", UnitFacts.Colour, "Slate");
        Assert.Equal((new DateOnly(2026, 3, 2), "Stone"), Frozen(job));
        job.Say("W01", UnitFacts.OrderedOn, "2026-03-03");
        Assert.Equal((new DateOnly(2026, 3, 3), "Slate"), Frozen(job));
        job.Forget("W01", UnitFacts.OrderedOn);
        Assert.Empty(FrozenUnit.All(job.Scribe.Log));
    }

    [Fact]
    public void TheyComeInTheOrderInWhichTheirDaysWerePut()
    {
        var job = Jobs.Ordered("W03", Jobs.Ordered("W02", Jobs.Ordered()));
        foreach (var tag in new[] { "W02", "W03", "W01" })
            job.Say(tag, UnitFacts.OrderedOn, "2026-03-02");
        Assert.Equal(["W02", "W03", "W01"], FrozenUnit.All(job.Scribe.Log).Select(f => f.AsFrozen.Tag));
    }

    [Fact]
    public void OfOneChangeTheyComeInTheOrderInWhichTheyWereAdded()
    {
        var job = Jobs.Ordered("W02", Jobs.Ordered());
        Draft Put(string tag) => SetFact.Typed(job.House, job.Unit(tag).Item, UnitFacts.OrderedOn, "2026-03-02").Value;
        job.Do(Put("W02").And(Put("W01")));
        Assert.Equal(["W01", "W02"], FrozenUnit.All(job.Scribe.Log).Select(f => f.AsFrozen.Tag));
    }

    [Fact]
    public void ItIsShownInTheUnitsOfToday()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, "2026-03-02").SayOf("", HouseFacts.Units, "millimetres");
        var frozen = FrozenUnit.All(job.Scribe.Log).Single().AsFrozen;
        Assert.Equal(DisplayUnits.Millimetres, frozen.House.DisplayUnits);
        Assert.Equal("914.4 mm", frozen.Show(UnitFacts.OrderWidth));
    }

    // The office saw nothing of what the van did before, and froze; the van had no sheet yet.
    [Fact]
    public void EachLaptopFreezesWhatItKnew()
    {
        var laptops = new TwoLaptops("ada", "bo");
        laptops.Do("ada", house => AddItems.Window(house, "W02", null));
        laptops.Take("bo", "ada");
        laptops.Type("ada", WindowFacts.Note, "known to Ada");
        laptops.Type("bo", WindowFacts.Note, "known to Bo");
        laptops.Do("ada", house => SetFact.Typed(house, house.FindTag("W01")!.Units[0].Item, UnitFacts.OrderedOn, "2026-03-03"));
        laptops.Do("bo", house => SetFact.Typed(house, house.FindTag("W02")!.Units[0].Item, UnitFacts.OrderedOn, "2026-03-03"));
        var frozen = FrozenUnit.All(laptops.Take("ada", "bo").Merged);
        Assert.Equal(["W01 known to Ada", "W02 known to Bo"],
            frozen.Select(f => $"{f.AsFrozen.Tag} {f.AsFrozen.House.FindTag("W01")!.Item.Get(WindowFacts.Note)}").Order());
    }

    private static (DateOnly, string?) Frozen(TestJob job)
    {
        var frozen = FrozenUnit.All(job.Scribe.Log).Single();
        Assert.Equal("W01", frozen.AsFrozen.Tag);
        return (frozen.On, frozen.AsFrozen.Item.Get(UnitFacts.Colour));
    }
}
