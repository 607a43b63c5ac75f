using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.BinderSections;

public class SinceLastBookTests
{
    private const string Heading = "Changed since the book of 2026-10-01";

    private static List<IReadOnlyList<string>> Rows(TestJob job) =>
        [.. Binder.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder(Heading)];

    [Fact]
    public void WhatIsOtherwiseThanInTheBookThatWasHandedOverIsListed()
    {
        var rows = Rows(ServedHouse.Build());
        Assert.Contains(rows, r => r is ["W02A", "replaced", "serial SN-W02A", var now] && now.Contains("2027-03-02", StringComparison.Ordinal)
            && now.EndsWith(", motor grinds, serial SN-NEW", StringComparison.Ordinal));
        Assert.DoesNotContain(rows, r => r[1] == "Serial");
        // A window comes with its unit and its cable: for whoever reads the book that is one thing.
        Assert.Single(rows, r => r[^1] == "added" && r[0].Contains("W09", StringComparison.Ordinal));
        Assert.Contains(rows, r => r is ["W03", _, _, "gone"]);
        Assert.Contains(rows, r => r is ["cable of W02A", "Volts, loaded", _, _] or ["cable of W02A", _, "11.9 V", _] || r[0] == "W02A");
        Assert.DoesNotContain(rows, r => r[0] == "W01");
    }

    [Fact]
    public void OnceTheDayOfTheNewBookIsNotedItTellsOfThatOne()
    {
        var job = ServedHouse.Build();
        job.SayOf(job.House.Name, HouseFacts.BinderGivenOn, "2027-03-10");
        Assert.DoesNotContain("Changed since the book", Binder.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown, StringComparison.Ordinal);
        job.Say("W01", UnitFacts.Colour, "Sand");
        Assert.Contains("Changed since the book of 2027-03-10", Binder.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasPutBackIsNoChange()
    {
        var job = FinishedHouse.Build();
        job.SayOf(job.House.Name, HouseFacts.BinderGivenOn, "2026-10-01").Say("W01", UnitFacts.Colour, "Sand").Say("W01", UnitFacts.Colour, "Chalk");
        Assert.DoesNotContain("Changed since the book", Binder.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown, StringComparison.Ordinal);
    }
}
