using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using TrimOut.Core.Units;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Templates;

namespace TrimOut.Papers.Tests;

/// <summary>docs/papers.md says what is so.</summary>
public class DocsTests
{
    private static readonly MarkdownDocument Page = Markdown.Parse(
        File.ReadAllText(Path.Combine(SampleJobs.Root, "docs", "papers.md")), new MarkdownPipelineBuilder().UsePipeTables().Build());

    [Fact]
    public void ThePageListsEveryPaperInOrderAndWhoItIsFor() =>
        Assert.Equal(PaperList.All.Select(p => (p.Id, p.Reader)), Rows(0).Select(r => (r[0], r[1])));

    [Fact]
    public void ThePageListsEverySectionOfTheBinderWithItsPlace() =>
        Assert.Equal(
            [("Cover", "cover, contents"), .. Binder.Paper.Sections.Select(s => (s.Title, s.Place))],
            Rows(1).Select(r => (r[0], r[2])));

    [Fact]
    public void TheTemplateOnThePageIsGoodForTheBinder()
    {
        var example = Page.Descendants<FencedCodeBlock>().Single(b => b.Info == "markdown").Lines.ToString();
        var template = PaperTemplate.Read(Binder.Paper, example);
        Assert.True(template.Ok, template.Reason);
        Assert.Contains("### Panel called P1", Binder.Paper.Write(FinishedHouse.Data(), template.Value).Markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void TheCommonSheetsOfLabelsOnThePageAreThoseThatThereAre()
    {
        var rows = Rows(Page.Descendants<Table>().ToList().FindIndex(t => Text((TableCell)((TableRow)t[0])[0]) == "Written as"));
        Assert.Equal(LabelGrid.Common.Select(g => (g, $"{Rounded(g.Top)}, {Rounded(g.Left)}, {Rounded(g.Across)} mm")),
            rows.Select(r => (LabelGrid.Read(r[0]).Value, r[2])));
        Assert.Equal(LabelGrid.Common.Select(g => g.IsLetter ? "Letter" : "A4"), rows.Select(r => r[1]));
    }

    private static string Rounded(Length length) => length.Millimetres.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    private static List<string[]> Rows(int table) =>
        [.. Page.Descendants<Table>().ElementAt(table).Cast<TableRow>().Skip(1).Select(r => r.Cast<TableCell>().Select(Text).ToArray())];

    private static string Text(TableCell cell) => string.Concat(cell.Descendants<LeafInline>().Select(l => l switch
    {
        CodeInline code => code.Content,
        LiteralInline text => text.Content.ToString(),
        _ => "",
    }));
}
