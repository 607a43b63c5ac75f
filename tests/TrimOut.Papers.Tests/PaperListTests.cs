using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests;

/// <summary>
/// What holds for every paper: of a finished house in inches and in millimetres, of a new one, and of every sample job. Pages are held to AngleSharp's reading.
/// </summary>
public class PaperListTests
{
    private static readonly PaperData[] Houses =
        [FinishedHouse.Data(), FinishedHouse.Data(FinishedHouse.Build(DisplayUnits.Millimetres).Scribe.Log), FinishedHouse.Data(new TestJob().Scribe.Log),
            .. SampleJobs.Names.Select(SampleJobs.Data)];

    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void ThePaperOfAFinishedHouseIsAsApproved(string id) => Approved.Match(PaperList.Find(id)!.Write(Houses[0]).Markdown, $"finished-{id}.md");

    [Fact]
    public void TheBinderInMillimetresAndTheBinderOfANewHouseAreAsApproved()
    {
        Approved.Match(Binder.Paper.Write(Houses[1]).Markdown, "finished-mm-binder.md");
        Approved.Match(Binder.Paper.Write(Houses[2]).Markdown, "new-binder.md");
    }

    public static IEnumerable<object[]> PapersOfSamples => from sample in SampleJobs.Names from paper in PaperList.All select new object[] { sample, paper.Id };

    [Theory]
    [MemberData(nameof(PapersOfSamples))]
    public void ThePaperOfASampleJobIsAsApproved(string sample, string id) =>
        Approved.Match(PaperList.Find(id)!.Write(Houses[3 + Array.IndexOf(SampleJobs.Names, sample)]).Markdown, $"{sample}-{id}.md");

    [Theory]
    [MemberData(nameof(Papers))]
    public void TheSameDataGiveTheSameBytes(string id)
    {
        var (one, other) = (PaperList.Find(id)!.Write(Houses[0]), PaperList.Find(id)!.Write(FinishedHouse.Data()));
        Assert.Equal(one.ToHtml(), other.ToHtml());
        Assert.Equal(one.Markdown, other.Markdown);
        Assert.DoesNotContain('\r', one.ToHtml());
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void ThePageParsesWithoutErrorAndNeedsNothingFromOutside(string id)
    {
        foreach (var data in Houses)
        {
            var errors = new List<string>();
            var parser = new HtmlParser();
            parser.Error += (_, e) => errors.Add(e.ToString()!);
            var page = parser.ParseDocument(PaperList.Find(id)!.Write(data).ToHtml());
            Assert.Empty(errors);
            Assert.Empty(page.QuerySelectorAll("script, link, iframe, object, embed, form, base, img, image, use, foreignObject"));
            Assert.DoesNotContain(page.All.SelectMany(e => e.Attributes), a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase));
            Assert.All(page.QuerySelectorAll("[href], [src]"),
                e => Assert.Matches("^(#.|tel:[+]?[0-9]{6,15}$)", e.GetAttribute("href") ?? e.GetAttribute("src")));
            Assert.All(page.QuerySelectorAll("a[href^='#']"), a => Assert.NotNull(page.GetElementById(a.GetAttribute("href")![1..])));
            Assert.DoesNotContain("url(", page.QuerySelector("style")!.TextContent, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("@import", page.QuerySelector("style")!.TextContent, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void HeadingsNestTablesHaveHeadersAndNoCellIsEmpty(string id)
    {
        foreach (var data in Houses)
        {
            var page = Page(PaperList.Find(id)!, data);
            var levels = page.QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.TagName[1] - '0').ToList();
            Assert.Equal(1, levels[0]);
            Assert.Single(levels, 1);
            Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
            Assert.All(page.QuerySelectorAll("table"), t => Assert.NotEmpty(t.QuerySelectorAll("thead th")));
            Assert.All(page.QuerySelectorAll("th, td"), c => Assert.NotEmpty(c.TextContent.Trim()));
            Assert.Equal(page.QuerySelectorAll("[id]").Length, page.QuerySelectorAll("[id]").Select(e => e.Id).Distinct().Count());
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void EveryDrawingIsInThePageAndIsSoundXml(string id)
    {
        foreach (var data in Houses)
        {
            var paper = PaperList.Find(id)!.Write(data);
            var html = paper.ToHtml();
            Assert.All(paper.Drawings, d =>
            {
                Assert.Contains($"({d.Key})", paper.Markdown, StringComparison.Ordinal);
                Assert.Contains(d.Value, html, StringComparison.Ordinal);
                Assert.Equal("svg", System.Xml.Linq.XDocument.Parse(d.Value).Root!.Name.LocalName);
            });
            Assert.Equal(paper.Drawings.Count, new HtmlParser().ParseDocument(html).QuerySelectorAll("svg[role=img] > title").Length);
        }
    }

    [Fact]
    public void IdsAreUniqueAndEveryPaperSaysWhoItIsFor()
    {
        Assert.Equal(PaperList.All.Count, PaperList.All.Select(p => p.Id).Distinct().Count());
        Assert.All(PaperList.All, p => Assert.Matches("^[a-z]+(-[a-z]+)*$", p.Id));
        Assert.All(PaperList.All, p => Assert.False(string.IsNullOrWhiteSpace(p.Title) || string.IsNullOrWhiteSpace(p.Reader) || !p.About.EndsWith('.')));
        Assert.All(PaperList.All, p => Assert.Equal(p.Sections.Count, p.Sections.Select(s => s.Title).Distinct().Count()));
        Assert.Null(PaperList.Find("nothing"));
    }

    private static IHtmlDocument Page(Paper paper, PaperData data) => new HtmlParser().ParseDocument(paper.Write(data).ToHtml());
}
