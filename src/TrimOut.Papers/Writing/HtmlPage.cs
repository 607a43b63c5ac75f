using System.Buffers;
using System.Globalization;
using System.Net;
using System.Text;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax.Inlines;

namespace TrimOut.Papers.Writing;

/// <summary>Turns a paper into one HTML page that needs nothing else: no script, no file, no network.</summary>
internal static class HtmlPage
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    private static readonly string Style = PageStyle.Css.ReplaceLineEndings("\n");

    /// <summary>The page.</summary>
    public static string Of(WrittenPaper paper)
    {
        // One text that is long enough from the beginning: a large binder would else be copied again and again.
        var page = new StringBuilder(4096 + 2 * paper.Markdown.Length + paper.Drawings.Values.Sum(d => d.Length));
        page.Append(CultureInfo.InvariantCulture,
            $"<!DOCTYPE html>\n<html lang=\"{WebUtility.HtmlEncode(paper.Language)}\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\">\n")
            .Append(CultureInfo.InvariantCulture,
                $"<title>{WebUtility.HtmlEncode(paper.Title)}</title>\n<style>\n{Style}\n</style>\n</head>\n<body>\n<main " +
                $"class=\"{WebUtility.HtmlEncode(paper.Id)}\">\n");
        using var body = new StringWriter(page, CultureInfo.InvariantCulture) { NewLine = "\n" };
        var renderer = new HtmlRenderer(body);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new Links(paper.Drawings));
        renderer.ObjectRenderers.Replace<HeadingRenderer>(new Headings());
        renderer.ObjectRenderers.Replace<LiteralInlineRenderer>(new Texts());
        renderer.ObjectRenderers.Replace<HtmlTableRenderer>(new Tables());
        renderer.Render(Markdown.Parse(paper.Markdown, Pipeline));
        return page.Append("</main>\n</body>\n</html>\n").ToString();
    }

    /// <summary>Puts a drawing in the place of its picture, and plain text in the place of anything that would lead outside.</summary>
    private sealed class Links(IReadOnlyDictionary<string, string> drawings) : LinkInlineRenderer
    {
        protected override void Write(HtmlRenderer renderer, LinkInline link)
        {
            if (link.IsImage && drawings.TryGetValue(link.Url ?? "", out var svg))
                renderer.Write(svg);
            else if (link.IsImage || link.Url?.StartsWith('#') != true && !PhoneNumber.IsLink(link.Url))
                renderer.WriteChildren(link);
            else
                base.Write(renderer, link);
        }
    }

    /// <summary>Gives the sections the names that the contents lead to: the first of a name has it.</summary>
    private sealed class Headings : HeadingRenderer
    {
        private readonly HashSet<string> _named = [];

        protected override void Write(HtmlRenderer renderer, Markdig.Syntax.HeadingBlock heading)
        {
            if (heading.Level == 2 && Anchor.Of(TextOf(heading)) is { Length: > 0 } name && _named.Add(name))
                heading.GetAttributes().Id = name;
            base.Write(renderer, heading);
        }

        private static string TextOf(Markdig.Syntax.HeadingBlock heading) =>
            string.Concat(heading.Inline?.OfType<LiteralInline>().Select(l => l.Content.ToString()) ?? []);
    }

    /// <summary>Marks cells that hold no more than a tag, figures with their unit or a day: these stay on one line.</summary>
    private sealed class Tables : HtmlTableRenderer
    {
        private const int Short = 10;
        private const int ShortFigures = 24;
        private static readonly SearchValues<char> OfFigures = SearchValues.Create("0123456789 /.,x");

        protected override void Write(HtmlRenderer renderer, Table table)
        {
            foreach (var row in table)
            {
                foreach (var cell in (TableRow)row)
                {
                    if (row is TableRow { IsHeader: false }
                        && ((TableCell)cell) is [Markdig.Syntax.ParagraphBlock
                        { Inline: { FirstChild: LiteralInline only } inline }] && inline.LastChild == only && StaysWhole(only.Content.AsSpan()))
                        cell.GetAttributes().AddClass("k");
                }
            }
            base.Write(renderer, table);
        }

        /// <summary>Whether it is short, or no more than some figures with their unit.</summary>
        private static bool StaysWhole(ReadOnlySpan<char> text) =>
            text.Length <= Short || text.Length <= ShortFigures && text[..(text.LastIndexOf(' ') + 1)].IndexOfAnyExcept(OfFigures) < 0;
    }

    /// <summary>Marks the blanks to write in, so that their cells are high enough for a hand.</summary>
    private sealed class Texts : LiteralInlineRenderer
    {
        protected override void Write(HtmlRenderer renderer, LiteralInline text)
        {
            if (renderer.EnableHtmlForInline && text.Content.Length == Inline.BlankMark.Length && text.Content.AsSpan().SequenceEqual(Inline.BlankMark))
                renderer.Write("<span class=\"blank\">").Write(Inline.BlankMark).Write("</span>");
            else
                base.Write(renderer, text);
        }
    }
}
