using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Papers.CrewPapers;

namespace TrimOut.Papers.Tests.CrewPapers;

public class HangSheetTests
{
    /// <summary>
    /// Two units ordered for 45 3/8" in an opening of 91", of which the maker takes 1/4": 45 1/8" hang over the middle of each half of 45 1/2".
    /// </summary>
    [Fact]
    public void UnitsOfOneOpeningBeginAndEndByTheWidthThatIsMadeOfWhatWasOrdered()
    {
        var job = FinishedHouse.Build();
        Assert.Equal(("3/16\"", "45 5/16\""), Ends("W02A"));
        Assert.Equal(("45 11/16\"", "90 13/16\""), Ends("W02B"));

        (string, string) Ends(string unit) => HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("table")
            .Where(t => t.QuerySelectorAll("th").Any(h => h.TextContent == "Unit begins, from the left of the opening"))
            .SelectMany(t => t.QuerySelectorAll("tbody tr")).Select(r => r.Children.Select(c => c.TextContent).ToList())
            .Where(r => r[0] == unit).Select(r => (r[1], r[5])).Single();
    }

    /// <summary>W01 is 35" wide; 1/2" comes off, made: it begins 1/4" from the jamb and ends 1/4" before the other. Nothing known: blanks, and why.</summary>
    [Theory]
    [InlineData("1/2", "1/4\"", "34 3/4\"")]
    [InlineData("", "______", "______")]
    public void WhatIsNotOrderedYetIsReckonedWithWhatComesOffOrLeftBlank(string off, string begins, string ends)
    {
        var job = FinishedHouse.Build();
        job.Do(SetFact.Typed(job.House, job.Unit("W01").Item, UnitFacts.OrderWidth, ""));
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom])
            job.Do(SetFact.Typed(job.House, job.Unit("W01").Window.Item, fact, "35"));
        foreach (var (fact, said) in ((Fact, string)[])[(CoveringKindFacts.OrderedInside, "made"), (CoveringKindFacts.DeductionInside, off)])
            job.Do(KitCheck.ReadOff(job.House, job.Unit("W01").Kind!.Item, fact, said));
        var page = HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        var row = page.QuerySelectorAll("table").Where(t => t.QuerySelectorAll("th").Any(h => h.TextContent == "Unit begins, from the left of the opening"))
            .SelectMany(t => t.QuerySelectorAll("tbody tr")).Select(r => r.Children.Select(c => c.TextContent).ToList()).Single(r => r[0] == "W01");
        Assert.Equal((begins, ends), (row[1], row[5]));
        Assert.Equal(off.Length == 0, page.Body!.TextContent.Contains("Blank until this is known: Deduction, inside, of ", StringComparison.Ordinal));
    }

    [Fact]
    public void BeforeSeveralAreOrderedNobodyIsToldToDrillForHalfTheOpening()
    {
        var job = FinishedHouse.Build();
        foreach (var unit in (string[])["W02A", "W02B"])
        {
            foreach (var fact in ((Fact[])[UnitFacts.OrderWidth, UnitFacts.PartWidth]).Where(f => job.Unit(unit).Item.Latest(f)?.Stored is not null))
                job.Do(SetFact.Typed(job.House, job.Unit(unit).Item, fact, ""));
        }
        var rows = HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("tbody tr")
            .Select(r => r.Children.Select(c => c.TextContent).ToList());
        Assert.Contains(rows, r => r is ["W02A", "______", _, _, _, "______", ..]);
    }

    /// <summary>A support that is needed and whose place nobody knows yet is a blank: a dash would say that there is none, beside a "yes".</summary>
    [Fact]
    public void ASupportWhosePlaceIsNotKnownYetIsABlankAndNoDash()
    {
        var job = FinishedHouse.Build();
        job.SayOf(job.House.NameOf(job.Unit("W02A").Kind!.Item), CoveringKindFacts.CentreFrom, "40");
        foreach (var unit in (string[])["W02A", "W02B"])
        {
            foreach (var fact in ((Fact[])[UnitFacts.OrderWidth, UnitFacts.PartWidth]).Where(f => job.Unit(unit).Item.Latest(f)?.Stored is not null))
                job.Do(SetFact.Typed(job.House, job.Unit(unit).Item, fact, ""));
        }
        var rows = HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("tbody tr")
            .Select(r => r.Children.Select(c => c.TextContent).ToList());
        Assert.Contains(rows, r => r is ["W02A", _, _, _, _, _, _, _, { } support] && support.StartsWith("yes", StringComparison.Ordinal));
        Assert.Contains(rows, r => r is ["W02A", "______", _, "______", _, "______", ..]);
    }

    /// <summary>W08 of the sample hangs outside and is ordered as it is made; of all others the maker takes something off.</summary>
    [Fact]
    public void TheHeadSaysThatTheSizeIsTheOrderedOneAndEachRowWhatItsWidthIs()
    {
        var tables = HangSheet.Paper.Page(SampleJobs.Data("orchard-cottage")).QuerySelectorAll("table")
            .Where(t => t.QuerySelectorAll("th").Any(h => h.TextContent == "Box label")).ToList();
        Assert.All(tables, t => Assert.Equal(["Ordered size", "Width is"], t.QuerySelectorAll("thead th").Select(h => h.TextContent).Skip(3).Take(2)));
        var rows = tables.SelectMany(t => t.QuerySelectorAll("tbody tr")).Select(r => r.Children.Select(c => c.TextContent).ToList()).ToList();
        Assert.Equal(11, rows.Count);
        Assert.All(rows, r => Assert.Equal(r[0] == "W08" ? "made" : "opening", r[4]));
        Assert.Equal("39 1/2\" x 56 5/8\"", rows.Single(r => r[0] == "W08")[3]);
    }

    [Fact]
    public void NobodyIsSentToPicturesThatAreNotThere()
    {
        var job = new Testing.TestJob().Window("W01");
        Assert.Contains("no picture of the open wall was noted", Before(), StringComparison.Ordinal);
        job.Say("W01", RunFacts.Photo, "wall.jpg");
        Assert.Contains("the pictures of the open wall, in the test record, say", Before(), StringComparison.Ordinal);

        string Before() => HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelector("ul")!.TextContent;
    }

    [Fact]
    public void HowHighAnOutsideMountHangsStandsBesideItsBrackets()
    {
        var job = FinishedHouse.Build();
        Assert.DoesNotContain("Head above the opening", Heads());
        job.Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.HeadAbove, "3 1/2");
        Assert.Contains("Head above the opening", Heads());
        var rows = Tables().First(t => t.QuerySelectorAll("th").Any(h => h.TextContent == "Head above the opening")).QuerySelectorAll("tbody tr");
        Assert.Equal("3 1/2\"", rows.First(r => r.Children[0].TextContent == "W01").Children[^1].TextContent);

        IEnumerable<AngleSharp.Dom.IElement> Tables() => HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("table");
        IEnumerable<string> Heads() => Tables().SelectMany(t => t.QuerySelectorAll("th")).Select(h => h.TextContent);
    }
}
