using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class DisagreementTests
{
    private readonly TwoLaptops _laptops = new("ada", "bo");

    private House Merged() => _laptops.Take("ada", "bo").Merged.House;

    [Fact]
    public void OnlyWhatTwoPutDifferentlyWithoutKnowingOfEachOtherIsOne()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45");
        _laptops.Type("ada", WindowFacts.RoughWidth, "46");
        _laptops.Type("ada", WindowFacts.RoughHeight, "70");
        _laptops.Type("bo", WindowFacts.RoughHeight, "70");
        _laptops.Type("ada", WindowFacts.Depth, "5");
        _laptops.Type("bo", WindowFacts.Depth, "6");
        var house = Merged();
        var one = Assert.Single(Disagreement.All(house));
        Assert.Equal((WindowFacts.Depth, null), (one.Fact, one.Key));
        Assert.Equal(["6\" by Bo on 2026-03-03 08:00", "5\" by Ada on 2026-03-03 08:00"], one.Heads.Select(h => one.Show(h, house)));
        Assert.Equal([false, false, true], new Fact[] { WindowFacts.RoughWidth, WindowFacts.RoughHeight, WindowFacts.Depth }
            .Select(f => Disagreement.IsAbout(house.FindTag("W01")!.Item, f)));
    }

    [Fact]
    public void TheyStandInTheOrderOfTheirItemsAndThenOfTheirFields()
    {
        _laptops.Do("ada", house => AddItems.Window(house, "W02", null));
        _laptops.Take("bo", "ada");
        foreach (var (name, value) in new[] { ("ada", "40"), ("bo", "41") })
        {
            _laptops.Type(name, WindowFacts.RoughWidth, value, "W02");
            _laptops.Type(name, WindowFacts.RoughWidth, value);
            _laptops.Type(name, WindowFacts.Depth, value);
        }
        var house = Merged();
        Assert.Equal(["W01 depth", "W01 rough-width", "W02 rough-width"], Disagreement.All(house).Select(d => $"{house.NameOf(d.Item)} {d.Fact.Name}"));
    }

    /// <summary>Whether a remote moves one unit and whether it moves another are two things, of one fact.</summary>
    [Fact]
    public void OfWhatIsKeptForEachUnitItSaysForWhich()
    {
        _laptops.Do("ada", house => AddItems.Window(house, "W02", null));
        _laptops.Do("ada", house => AddItems.Named(house, ItemKind.Remote, "Wall"));
        _laptops.Take("bo", "ada");
        var unit = _laptops["ada"].House.FindTag("W02")!.Units[0].Id;
        foreach (var (name, value) in new[] { ("ada", "yes"), ("bo", "no") })
            _laptops.Do(name, house => new Draft("moves").PutStored(house.Remotes[0].Id, RemoteFacts.Moves.Field(unit), value));
        var house = Merged();
        Assert.Equal(unit, Assert.Single(Disagreement.Of(house.Remotes[0].Item)).Key);
        Assert.True(Disagreement.IsAbout(house.Remotes[0].Item, RemoteFacts.Moves));
        Assert.False(Disagreement.IsAbout(house.Remotes[0].Item, RemoteFacts.Name));
    }
}
