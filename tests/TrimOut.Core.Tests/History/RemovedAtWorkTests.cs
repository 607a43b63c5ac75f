using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class RemovedAtWorkTests
{
    private readonly TwoLaptops _laptops = new("ada", "bo");

    private static readonly Fact[] InOrder =
        [WindowFacts.Depth, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight, WindowFacts.WidthBottom, WindowFacts.WidthTop];

    private string Told()
    {
        var merged = _laptops.Take("ada", "bo").Merged.House;
        return Assert.Single(RemovedAtWork.All(merged)).Show(merged);
    }

    [Theory]
    [InlineData(1, "(Depth)")]
    [InlineData(4, "(Depth, Height, left, Height, middle, Height, right)")]
    [InlineData(5, "(Depth, Height, left, Height, middle, Height, right, 1 more)")]
    [InlineData(6, "(Depth, Height, left, Height, middle, Height, right, 2 more)")]
    public void FourDetailsAreNamedAndTheOthersCounted(int facts, string named)
    {
        _laptops.Do("ada", house => RemoveItems.Remove(house, house.FindTag("W01")!.Item));
        foreach (var fact in InOrder.Take(facts).Reverse())
            _laptops.Type("bo", fact, "30");
        Assert.EndsWith($"while Bo went on with it {named}.", Told(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotRemovedIsNoFindingWhateverElseIs()
    {
        Assert.Empty(RemovedAtWork.All(_laptops["ada"].House));
        _laptops.Do("ada", house => AddItems.Window(house, "W02", null));
        _laptops.Take("bo", "ada");
        _laptops.Do("ada", house => RemoveItems.Remove(house, house.FindTag("W02")!.Item));
        _laptops.Type("bo", WindowFacts.Depth, "5");
        Assert.Empty(RemovedAtWork.All(_laptops.Take("ada", "bo").Merged.House));
    }

    [Fact]
    public void WorkOnThePartOfWhatWasRemovedIsToldOfWhatWasRemoved()
    {
        _laptops.Do("ada", house => RemoveItems.Remove(house, house.FindTag("W01")!.Item));
        _laptops.Do("bo", house => SetFact.Typed(house, house.FindTag("W01")!.Units[0].Item, UnitFacts.Serial, "7"));
        Assert.EndsWith("while Bo went on with it (Serial).", Told(), StringComparison.Ordinal);
        Assert.Equal("W01", _laptops["ada"].House.NameOf(RemovedAtWork.All(_laptops["ada"].House).Single().Item));
    }
}
