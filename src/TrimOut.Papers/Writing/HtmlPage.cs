using System.Net;
using Markdig;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace TrimOut.Papers.Writing;

/// <summary>Turns a paper's Markdown into one HTML page that needs nothing else: no script, no file, no network.</summary>
internal static class HtmlPage
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <summary>The page.</summary>
    /// <param name="title">Its title, as typed.</param>
    /// <param name="markdown">The paper.</param>
    public static string Of(string title, string markdown)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        foreach (var heading in document.Descendants<HeadingBlock>().Where(h => h.Level == 2))
            heading.GetAttributes().Id = Anchor.Of(TextOf(heading));
        using var body = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(body);
        Pipeline.Setup(renderer);
        renderer.Render(document);
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
            <title>{WebUtility.HtmlEncode(title)}</title>
            <style>
            {PageStyle.Css}
            </style>
            </head>
            <body>
            <main>
            {body}</main>
            </body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    private static string TextOf(HeadingBlock heading) =>
        string.Concat(heading.Inline?.Descendants<LiteralInline>().Select(l => l.Content.ToString()) ?? []);
}
