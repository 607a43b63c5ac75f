using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Tests.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Copies;

public class PanelNameTwiceTests
{
    public static Example Finds => new(() => Jobs.Walked(), j => Copies.Merged(j, a => a.Add(ItemKind.Panel, "P7"), b => b.Add(ItemKind.Panel, "P7")));

    public static Example Passes => new(() => Jobs.Walked(), j => Copies.Merged(j, a => a.Add(ItemKind.Panel, "P7"), b => b.Add(ItemKind.Panel, "P8")));

    [Fact]
    public void TwoLaptopsThatAddOneNameAreAStopWhateverItsCase()
    {
        var laptops = new TwoLaptops("ada", "bo");
        laptops.Do("ada", house => AddItems.Named(house, ItemKind.Panel, "P2"));
        laptops.Do("bo", house => AddItems.Named(house, ItemKind.Panel, "p2"));
        laptops.Take("ada", "bo");
        var found = new PanelNameTwice().Run(laptops["ada"].House).Select(r => r.Outcome).OfType<Outcome.Found>().ToList();
        Assert.Equal(2, found.Count);
        Assert.Equal("P2 is the name of 2 panels.", found[0].Message.In(laptops["ada"].House));
    }

    [Theory]
    [InlineData(ItemKind.Hub, "HOUSE HUB is the name of 2 hubs.", "hub")]
    [InlineData(ItemKind.Remote, "HOUSE HUB is the name of 2 remotes.", "remote")]
    public void SoAreTwoHubsAndTwoRemotes(ItemKind kind, string said, string mended)
    {
        var laptops = new TwoLaptops("ada", "bo");
        laptops.Do("ada", house => AddItems.Named(house, kind, "HOUSE HUB"));
        laptops.Do("bo", house => AddItems.Named(house, kind, "House hub"));
        laptops.Take("ada", "bo");
        var results = new PanelNameTwice().Run(laptops["ada"].House).ToList();
        Assert.Equal([Phase.Pair, Phase.Pair], results.Select(r => r.Check.Phase));
        var found = results.Select(r => r.Outcome).OfType<Outcome.Found>().ToList();
        Assert.Equal(2, found.Count);
        Assert.Equal(said, found[0].Message.In(laptops["ada"].House));
        Assert.EndsWith($"if both are the same {mended}.", found[0].Mend.In(laptops["ada"].House), StringComparison.Ordinal);
    }

    [Fact]
    public void APanelAHubAndARemoteMayShareAName()
    {
        var job = new TestJob().Add(ItemKind.Panel, "Attic").Add(ItemKind.Hub, "Attic").Add(ItemKind.Remote, "Attic");
        Assert.Equal(3, new PanelNameTwice().Run(job.House).Count(r => r.Outcome is Outcome.Fine));
    }

    [Fact]
    public void NamesOfTheirOwnAreFine()
    {
        var job = new TestJob().Add(ItemKind.Panel, "P7").Add(ItemKind.Panel, "P8");
        Assert.All(new PanelNameTwice().Run(job.House), r => Assert.IsType<Outcome.Fine>(r.Outcome));
    }

    [Fact]
    public void AllThatHaveTheNameAreCounted()
    {
        var job = new TestJob().Add(ItemKind.Panel, "P7").Add(ItemKind.Panel, "P8").Add(ItemKind.Panel, "P9");
        foreach (var panel in job.House.Panels.Skip(1).ToList())
            job.Do(new Draft("name").PutStored(panel.Id, PanelFacts.Name.Name, "P7"));
        var results = new PanelNameTwice().Run(job.House).ToList();
        Assert.Equal([Phase.RoughIn, Phase.RoughIn, Phase.RoughIn], results.Select(r => r.Check.Phase));
        Assert.All(results, r => Assert.Equal("P7 is the name of 3 panels.", ((Outcome.Found)r.Outcome).Message.In(job.House)));
        Assert.EndsWith("if both are the same panel.", ((Outcome.Found)results[0].Outcome).Mend.In(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void APanelWithoutANameHasNoNamesake()
    {
        var job = new TestJob().Add(ItemKind.Panel, "P7").Add(ItemKind.Panel, "P8");
        foreach (var panel in job.House.Panels.ToList())
            job.Do(new Draft("no name").PutStored(panel.Id, PanelFacts.Name.Name, null));
        Assert.Empty(new PanelNameTwice().Run(job.House));
    }
}
