using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Tests.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Copies;

public class TagTwiceTests
{
    public static Example Finds => new(() => Jobs.Walked(), j => Copies.Merged(j, a => a.Window("W02"), b => b.Window("W02")));

    public static Example Passes => new(() => Jobs.Walked(), j => Copies.Merged(j, a => a.Window("W02"), b => b.Window("W03")));

    [Fact]
    public void TwoLaptopsThatAddOneTagAreAStop()
    {
        var laptops = new TwoLaptops("ada", "bo");
        foreach (var name in new[] { "ada", "bo" })
            laptops.Do(name, house => AddItems.Window(house, "W02", null));
        laptops.Take("ada", "bo");
        var found = new TagTwice().Run(laptops["ada"].House).Select(r => r.Outcome).OfType<Outcome.Found>().ToList();
        Assert.Equal(2, found.Count);
        Assert.Equal("W02 is also the tag of a window in no room.", found[0].Message.In(laptops["ada"].House));
    }

    [Fact]
    public void TagsOfTheirOwnAreFine()
    {
        var job = new TestJob().Window("W01").Window("W02");
        Assert.All(new TagTwice().Run(job.House), r => Assert.IsType<Outcome.Fine>(r.Outcome));
    }

    [Fact]
    public void OfSeveralOthersTheyAreCountedAndEachRoomIsNamedOnce()
    {
        var job = new TestJob().Window("W01", "Den").Window("W02", "Den").Window("W03", "Den").Window("W04", "Hall");
        foreach (var window in job.House.Windows.Skip(1).ToList())
            job.Do(new Draft("tag").PutStored(window.Id, WindowFacts.Tag.Name, "w01"));
        var found = new TagTwice().Run(job.House).Select(r => ((Outcome.Found)r.Outcome).Message.In(job.House)).ToList();
        Assert.Equal(4, found.Count);
        Assert.Equal("W01 is also the tag of 3 windows in Den, Hall.", found[0]);
        Assert.Equal("w01 is also the tag of 3 windows in Den.", found[3]);
    }

    [Fact]
    public void AWindowWithoutATagHasNoNamesake()
    {
        var job = new TestJob().Window("W01").Window("W02");
        foreach (var window in job.House.Windows.ToList())
            job.Do(new Draft("no tag").PutStored(window.Id, WindowFacts.Tag.Name, null));
        Assert.Empty(new TagTwice().Run(job.House));
    }
}
