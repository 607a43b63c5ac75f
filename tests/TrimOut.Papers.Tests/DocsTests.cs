using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
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

    private static List<string[]> Rows(int table) =>
        [.. Page.Descendants<Table>().ElementAt(table).Cast<TableRow>().Skip(1).Select(r => r.Cast<TableCell>().Select(Text).ToArray())];

    private static string Text(TableCell cell) => string.Concat(cell.Descendants<LeafInline>().Select(l => l switch
    {
        CodeInline code => code.Content,
        LiteralInline text => text.Content.ToString(),
        _ => "",
    }));
}
