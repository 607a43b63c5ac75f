using System.Xml.Linq;
using TrimOut.Core.Facts;
using TrimOut.Papers.Tests.Labels;

namespace TrimOut.Papers.Tests.OwnerPapers;

/// <summary>Codes are read back by ZXing from the shapes of the drawing itself, as a phone would from paper.</summary>
public class CardAndDoorTests
{
    private static readonly Paper Card = PaperList.Find("card")!;
    private static readonly Paper Door = PaperList.Find("panel-door")!;

    [Fact]
    public void TheCardSaysWhichBreakerInWhichBoardAndWhomToCall()
    {
        var page = Card.Page(FinishedHouse.Data());
        Assert.Equal(["P1", "Mechanical room, north wall", "Main board", "14, 15 A", "Kitchen, Bedroom"],
            page.TableUnder("All stop, or all of one panel").Single());
        Assert.Contains(page.TableUnder("Whom to call"), r => r[1] == "R. Example" && r[2] == "555 0101");
        Assert.Contains(page.QuerySelectorAll("a[href^='tel:']"), a => a.GetAttribute("href") == "tel:5550101");
        Assert.StartsWith("Danger first.", page.QuerySelector("p")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>The row says that a licensed electrician is called: who has no number beside the name may be none.</summary>
    [Fact]
    public void WhoConnectedPanelsWithoutALicenseIsNotCalledLicensed()
    {
        var job = FinishedHouse.Build();
        Assert.DoesNotContain("ask for it", Mains(), StringComparison.Ordinal);
        job.SayOf("P1", PanelFacts.Licence, "");
        Assert.EndsWith("no license was noted: ask for it", Mains(), StringComparison.Ordinal);

        string Mains() => string.Join(' ', Card.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Whom to call").Single(r => r[1] == "Sparks Example"));
    }

    /// <summary>Whoever lands the next cable goes by the word free.</summary>
    [Fact]
    public void AnOutputWithACableThatNobodyWantsIsNotFree()
    {
        var job = FinishedHouse.Build();
        var output = job.Unit("W01").Run!.Output!.Value;
        job.Say("W01", UnitFacts.Power, "battery");
        var data = FinishedHouse.Data(job.Scribe.Log);
        foreach (var paper in new[] { Door, Binder.Paper })
        {
            Assert.Contains(paper.Page(data).QuerySelectorAll("tr").Select(r => r.Children.Select(c => c.TextContent).ToList()),
                r => r is [var at, "W01", "not wanted, and landed: it is live", ..] && at == $"{output}, stop");
        }
        var schedule = PaperList.Find("panel-schedule")!.Page(data);
        Assert.Contains($"Landed and not wanted, and so live: {output}: W01.", schedule.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatTheCardSaysTheBookSaysInTheSameWords()
    {
        var (card, book) = (Card.Page(FinishedHouse.Data()), Binder.Paper.Page(FinishedHouse.Data()));
        Assert.Equal(book.SaidUnder("One covering stops"), card.SaidUnder("One covering stops"));
        Assert.Equal(book.TableUnder("Whom to call"), card.TableUnder("Whom to call"));
    }

    [Fact]
    public void WithoutAWebAddressTheCodeSaysInWordsWhereToLook()
    {
        var data = FinishedHouse.Data() with { FilesOf = "ridge" };
        var code = Assert.Single(Codes(Card, data));
        Assert.Equal("Test house: owner's binder, section \"When something stops\", file ridge-binder.html", code);
        Assert.Contains(code, Card.Page(data).SaidUnder("All else is in the owner's binder"));
        Assert.Contains("section \"Panel map\"", Assert.Single(Codes(Door, data)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("https://book.example/house", "https://book.example/house#when-something-stops")]
    [InlineData(" http://book.example/a?b=c#d", "http://book.example/a?b=c#when-something-stops")]
    [InlineData("javascript:alert(1)", null)]
    [InlineData("file:///home/a/book.html", null)]
    [InlineData("on the shelf", null)]
    public void TheCodeIsAnAddressOnlyWhereTheHouseHasOne(string typed, string? address)
    {
        var job = FinishedHouse.Build();
        job.SayOf("", HouseFacts.BookAt, typed);
        var code = Assert.Single(Codes(Card, FinishedHouse.Data(job.Scribe.Log)));
        Assert.Equal(address ?? "Test house: owner's binder, section \"When something stops\", file binder.html", code);
    }

    [Fact]
    public void TheSectionThatACodeLeadsToIsInTheBook()
    {
        var book = Binder.Paper.Page(FinishedHouse.Data());
        Assert.NotNull(book.GetElementById("when-something-stops"));
        Assert.NotNull(book.GetElementById("panel-map"));
    }

    [Fact]
    public void TheSheetOnTheDoorLeavesTheMainsToALicensedElectricianAndAddsUpTheLoad()
    {
        var page = Door.Page(FinishedHouse.Data());
        Assert.Contains(page.QuerySelectorAll("li"), l => l.TextContent.StartsWith(
            "Mains inside. Connected and disconnected by a licensed electrician only", StringComparison.Ordinal));
        var facts = page.TableUnder("Panel P1");
        Assert.Contains(facts, f => f.SequenceEqual(["Breaker", "14, 15 A"]));
        Assert.Contains(facts, f => f[0] == "All units starting at once" && f[1].EndsWith(" A", StringComparison.Ordinal));
        var outputs = page.QuerySelectorAll("table").Last().QuerySelectorAll("tbody tr").Select(r => (r.Children[0].TextContent, r.Children[1].TextContent));
        Assert.Equal([("1", "W01"), ("2", "W02A"), ("3", "W02B"), ("4–10", "free")], outputs);
    }

    private static IEnumerable<string> Codes(Paper paper, PaperData data) => paper.Write(data).Drawings.Values.SelectMany(d =>
        XDocument.Parse(d).Descendants().Where(e => e.Name.LocalName == "path").Select(e => CodeReader.Read(e.Attribute("d")!.Value)));
}
