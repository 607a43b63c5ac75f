using System.Net;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace TrimOut.Papers.Writing;

/// <summary>Turns a paper into one HTML page that needs nothing else: no script, no file, no network.</summary>
internal static class HtmlPage
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <summary>The page.</summary>
    public static string Of(WrittenPaper paper)
    {
        var document = Markdown.Parse(paper.Markdown, Pipeline);
        foreach (var headings in document.Descendants<HeadingBlock>().Where(h => h.Level == 2).GroupBy(h => Anchor.Of(TextOf(h))).Where(g => g.Key.Length > 0))
            headings.First().GetAttributes().Id = headings.Key;
        foreach (var link in document.Descendants<LinkInline>().ToList())
            Settle(link, paper.Drawings);
        foreach (var cell in document.Descendants<TableCell>().Where(IsBlank))
            cell.GetAttributes().AddClass("blank");
        using var body = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(body);
        Pipeline.Setup(renderer);
        renderer.Render(document);
        return $"""
            <!DOCTYPE html>
            <html lang="{WebUtility.HtmlEncode(paper.Language)}">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
            <title>{WebUtility.HtmlEncode(paper.Title)}</title>
            <style>
            {PageStyle.Css}
            </style>
            </head>
            <body>
            <main class="{WebUtility.HtmlEncode(paper.Id)}">
            {body}</main>
            </body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    /// <summary>Puts a drawing in the place of its picture, and plain text in the place of anything that would lead outside.</summary>
    private static void Settle(LinkInline link, IReadOnlyDictionary<string, string> drawings)
    {
        if (link.IsImage && drawings.TryGetValue(link.Url ?? "", out var svg))
            link.ReplaceBy(new HtmlInline(svg), copyChildren: false);
        else if (link.IsImage || link.Url?.StartsWith('#') != true)
            link.ReplaceBy(new LiteralInline(string.Concat(link.Descendants<LiteralInline>().Select(l => l.Content.ToString()))), copyChildren: false);
    }

    private static bool IsBlank(TableCell cell)
    {
        var pieces = cell.Descendants<LiteralInline>();
        return pieces.FirstOrDefault() is { } first && first.Content.ToString().StartsWith('_') && string.Concat(pieces.Select(l => l.Content.ToString())) == Inline.BlankMark;
    }

    private static string TextOf(HeadingBlock heading) =>
        string.Concat(heading.Inline?.Descendants<LiteralInline>().Select(l => l.Content.ToString()) ?? []);
}
