using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests;

public class BinderTests
{
    private static readonly MarkdownPipeline Tables = new MarkdownPipelineBuilder().UsePipeTables().Build();

    private static HouseLog Finished { get; } = FinishedHouse.Build().Scribe.Log;

    [Fact]
    public void TheSameHouseAndDayGiveTheSameBytes()
    {
        var again = FinishedHouse.Build().Scribe.Log;
        Assert.Equal(Written(Finished), Written(again));
        Assert.Equal(Binder.Html(Finished, FinishedHouse.Day), Binder.Html(again, FinishedHouse.Day));
        Assert.DoesNotContain('\r', Binder.Html(again, FinishedHouse.Day));
        Assert.Contains("2026-10-01", Binder.Markdown(Finished, FinishedHouse.Day.AddDays(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void EveryRowOfEveryTableHasACellPerColumn()
    {
        var tables = Markdown.Parse(Written(Finished), Tables).Descendants<Table>().ToList();
        Assert.True(tables.Count > 15);
        Assert.All(tables, t =>
        {
            var rows = t.Cast<TableRow>().ToList();
            Assert.True(rows.Count > 1);
            Assert.All(rows, r => Assert.Equal(rows[0].Count, r.Count));
            Assert.All(rows.SelectMany(r => r).Cast<TableCell>(), c => Assert.NotEmpty(c.Descendants<Markdig.Syntax.Inlines.LiteralInline>()));
        });
    }

    [Fact]
    public void CautionsComeBeforeEverythingElse() => Assert.Equal("Cautions first", Page(Finished).QuerySelector("h2")!.TextContent);

    [Fact]
    public void EveryOutputOfThePanelIsOnItsMap()
    {
        var outputs = Table(Page(Finished), "Panel P1", 1);
        Assert.Equal(Enumerable.Range(1, 10).Select(n => $"{n}"), outputs.Select(r => r[0]));
        Assert.Equal(["1", "W01", "Kitchen", "P1-W01", "12.3 V", "11.9 V"], outputs[0]);
        Assert.Equal("free", outputs[9][1]);
    }

    [Fact]
    public void ATestNamesItsInstrumentItsPersonAndItsDay()
    {
        var test = Table(Page(Finished), "Loop tests", 0)[0];
        Assert.Equal(["W01", "0.41 ohm", "Meter 7, calibrated 2026-01-09, Test crew, 2026-03-12", "0.42 ohm"], test.Take(4));
    }

    [Fact]
    public void OpenAndWaivedFindingsStandApart()
    {
        var page = Page(Finished);
        Assert.Contains(Table(page, "Findings", 0), r => r[0] == "W03" && r[1] == "Stop");
        Assert.DoesNotContain(Table(page, "Findings", 0), r => r[0] == "W02B" && r[2].Contains("lead", StringComparison.Ordinal));
        var waived = Assert.Single(Table(page, "Waived, with the reason", 0));
        Assert.Equal(["W02B", "Lead goes behind the fascia.", "RE"], [waived[0], waived[2], waived[3]]);
    }

    private static string Written(HouseLog log) => Binder.Markdown(log, FinishedHouse.Day, FinishedHouse.Report(log.House));

    private static IHtmlDocument Page(HouseLog log) => new HtmlParser().ParseDocument(Binder.Html(log, FinishedHouse.Day, FinishedHouse.Report(log.House)));

    /// <summary>The body of the nth table behind a heading, as text.</summary>
    private static List<List<string>> Table(IHtmlDocument page, string heading, int nth)
    {
        var at = page.QuerySelectorAll("h2, h3").Single(h => h.TextContent == heading).NextElementSibling;
        for (; at is not IHtmlTableElement || nth-- > 0; at = at.NextElementSibling)
            Assert.NotNull(at);
        return [.. at.QuerySelectorAll("tbody tr").Select(r => r.Children.Select(c => c.TextContent).ToList())];
    }
}
