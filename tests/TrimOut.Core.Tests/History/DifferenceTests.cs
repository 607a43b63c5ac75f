using TrimOut.Core.Facts;
using TrimOut.Core.History;

namespace TrimOut.Core.Tests.History;

public class DifferenceTests
{
    private readonly TwoLaptops _laptops = new("ada", "bo");

    [Fact]
    public void CopiesThatNobodyWorkedOnDoNotDiffer()
    {
        var none = Difference.Between(_laptops["ada"].Log, _laptops["bo"].Log);
        Assert.Empty(none.OnlyHere);
        Assert.Empty(none.OnlyThere);
        Assert.Empty(none.Values);
    }

    [Fact]
    public void WhatEitherHasAloneIsSaidWithBothValues()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("ada", WindowFacts.RoughHeight, "60");
        _laptops.Type("bo", WindowFacts.RoughHeight, "60");
        _laptops.Type("bo", WindowFacts.Note, "arched");
        var difference = Difference.Between(_laptops["ada"].Log, _laptops["bo"].Log);
        Assert.Equal(["ada:1", "ada:2"], difference.OnlyHere.Select(c => c.Id.ToString()));
        Assert.Equal(["bo:1", "bo:2"], difference.OnlyThere.Select(c => c.Id.ToString()));
        Assert.Equal<(string, string, string)>([("W01: Note", "-", "arched"), ("W01: Rough width", "45 1/2\"", "-")], difference.Values);
    }

    [Fact]
    public void AWindowThatOnlyOneHasIsSaidByItsFactsAndOneThatNeitherHasIsNot()
    {
        _laptops.Do("bo", house => Core.Decisions.AddItems.Window(house, "W02", null));
        Assert.Contains(("W02: Tag", "-", "W02"), Difference.Between(_laptops["ada"].Log, _laptops["bo"].Log).Values);
        Assert.Contains(("W02: Tag", "W02", "-"), Difference.Between(_laptops["bo"].Log, _laptops["ada"].Log).Values);
        _laptops.Do("bo", house => Core.Decisions.RemoveItems.Remove(house, house.FindTag("W02")!.Item));
        Assert.Empty(Difference.Between(_laptops["ada"].Log, _laptops["bo"].Log).Values);
    }

    // A value that this version can't read is shown as it is stored.
    [Fact]
    public void WhatCanNotBeReadIsShownAsItIsStored()
    {
        _laptops.Do("ada", house => new Draft("w").PutStored(house.FindTag("W01")!.Id, WindowFacts.RoughWidth.Name, "900 units"));
        _laptops.Do("ada", house => new Draft("w").PutStored(house.FindTag("W01")!.Id, "shade", "red"));
        Assert.Equal<(string, string, string)>([("W01: Rough width", "900 units", "-")],
            Difference.Between(_laptops["ada"].Log, _laptops["bo"].Log).Values);
    }
}
