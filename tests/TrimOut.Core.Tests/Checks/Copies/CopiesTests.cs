using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Facts;
using TrimOut.Core.Tests.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Copies;

public class ValuesDisagreeTests
{
    private readonly TwoLaptops _laptops = new("ada", "bo");

    [Fact]
    public void TwoLaptopsWithDifferentKeptValuesAreACaution()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 5/8");
        _laptops.Take("bo", "ada");
        var found = Assert.IsType<Outcome.Found>(Assert.Single(new ValuesDisagree().Run(_laptops["bo"].House)).Outcome);
        Assert.Equal("Rough width: 45 1/2\" by Ada on 2026-03-03 08:00, or 45 5/8\" by Bo on 2026-03-03 08:00. The last is shown.", found.Message);
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 5/8");
        Assert.Empty(new ValuesDisagree().Run(_laptops["bo"].House));
    }

    [Fact]
    public void OneLaptopAloneNeverDisagrees()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 5/8");
        Assert.Empty(new ValuesDisagree().Run(_laptops["ada"].House));
    }
}

public class TagTwiceTests
{
    [Fact]
    public void TwoLaptopsThatAddOneTagAreAStop()
    {
        var laptops = new TwoLaptops("ada", "bo");
        foreach (var name in new[] { "ada", "bo" })
            laptops.Do(name, house => Core.Decisions.AddItems.Window(house, "W02", null));
        laptops.Take("ada", "bo");
        var found = new TagTwice().Run(laptops["ada"].House).Select(r => r.Outcome).OfType<Outcome.Found>().ToList();
        Assert.Equal(2, found.Count);
        Assert.Equal("W02 is also the tag of a window in no room.", found[0].Message);
    }

    [Fact]
    public void TagsOfTheirOwnAreFine()
    {
        var job = new TestJob().Window("W01").Window("W02");
        Assert.All(new TagTwice().Run(job.House), r => Assert.IsType<Outcome.Fine>(r.Outcome));
    }
}
