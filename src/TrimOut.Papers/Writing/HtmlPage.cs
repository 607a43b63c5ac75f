using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax.Inlines;

namespace TrimOut.Papers.Writing;

/// <summary>Turns a paper into one HTML page that needs nothing else: no script, no file, no network.</summary>
internal static partial class HtmlPage
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    private static readonly string Style = PageStyle.Css.ReplaceLineEndings("\n");

    /// <summary>The page.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="sheets">The sheets that it is printed on; null for a page that is for the screen as well.</param>
    public static string Of(WrittenPaper paper, PrintedSheets? sheets)
    {
        // One text that is long enough from the beginning: a large binder would else be copied again and again.
        var page = new StringBuilder(4096 + 2 * paper.Markdown.Length + paper.Drawings.Values.Sum(d => d.Length));
        page.Append(CultureInfo.InvariantCulture,
            $"<!DOCTYPE html>\n<html lang=\"{WebUtility.HtmlEncode(paper.Language)}\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\">\n")
            .Append(CultureInfo.InvariantCulture,
                $"<title>{WebUtility.HtmlEncode(paper.Title)}</title>\n<style>\n{Style}\n{RunningLines.Of(paper, sheets?.Size)}\n</style>\n</head>\n" +
                $"<body>\n<main class=\"{WebUtility.HtmlEncode(paper.Id)}\">\n");
        using var body = new StringWriter(page, CultureInfo.InvariantCulture) { NewLine = "\n" };
        var renderer = new HtmlRenderer(body);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new Links(paper.Drawings, sheets));
        var headings = new Headings();
        renderer.ObjectRenderers.Replace<HeadingRenderer>(headings);
        renderer.ObjectRenderers.Replace<ParagraphRenderer>(new Paragraphs());
        renderer.ObjectRenderers.Replace<LiteralInlineRenderer>(new Texts());
        renderer.ObjectRenderers.Replace<HtmlTableRenderer>(new HtmlTables(() => headings.Last, () => headings.Part));
        renderer.Render(Markdown.Parse(paper.Markdown, Pipeline));
        return page.Append("</main>\n</body>\n</html>\n").ToString();
    }

    /// <summary>
    /// Puts a drawing in the place of its picture, plain text in the place of anything that would lead outside, and in print the page behind a link to a
    /// section.
    /// </summary>
    private sealed class Links(IReadOnlyDictionary<string, string> drawings, PrintedSheets? sheets) : LinkInlineRenderer
    {
        protected override void Write(HtmlRenderer renderer, LinkInline link)
        {
            if (link.IsImage && drawings.TryGetValue(link.Url ?? "", out var svg))
                renderer.Write(svg);
            else if (link.IsImage || link.Url?.StartsWith('#') != true && !PhoneNumber.IsLink(link.Url))
                renderer.WriteChildren(link);
            else
                base.Write(renderer, link);
            if (sheets is not null && !link.IsImage && link.Url?.StartsWith('#') == true)
                renderer.Write("<span class=\"page\">").Write(sheets.PageOf(TextOf(link))).Write("</span>");
        }
    }

    /// <summary>Lets the keyboard reach drawings, which a phone moves sideways in their frame.</summary>
    private sealed class Paragraphs : ParagraphRenderer
    {
        protected override void Write(HtmlRenderer renderer, Markdig.Syntax.ParagraphBlock paragraph)
        {
            if (paragraph.Inline?.FirstChild is LinkInline { IsImage: true })
                paragraph.GetAttributes().AddProperty("tabindex", "0");
            base.Write(renderer, paragraph);
        }
    }

    /// <summary>Gives the sections the names that the contents lead to: the first of a name has it.</summary>
    private sealed class Headings : HeadingRenderer
    {
        private readonly HashSet<string> _named = [];

        /// <summary>The heading that was written last, as HTML.</summary>
        public string Last { get; private set; } = "";

        /// <summary>The part of its section that is being written, such as a room or a panel, as HTML; empty outside one.</summary>
        public string Part { get; private set; } = "";

        protected override void Write(HtmlRenderer renderer, Markdig.Syntax.HeadingBlock heading)
        {
            var text = heading.Inline is { } inline ? TextOf(inline) : "";
            if (heading.Level == 2 && Anchor.Of(text) is { Length: > 0 } name && _named.Add(name))
                heading.GetAttributes().Id = name;
            Last = WebUtility.HtmlEncode(text);
            Part = heading.Level > 2 ? Last : "";
            base.Write(renderer, heading);
        }
    }

    private static string TextOf(ContainerInline inline) => string.Concat(inline.OfType<LiteralInline>().Select(l => l.Content.ToString()));

    /// <summary>
    /// Marks the blanks to write in, so that their cells are high enough for a hand, and what no line end may part: 35 at the end of one line and 7/16" at the
    /// beginning of the next are read as two figures, and half a day or half a number of a license as a whole one.
    /// </summary>
    private sealed partial class Texts : LiteralInlineRenderer
    {
        protected override void Write(HtmlRenderer renderer, LiteralInline text)
        {
            if (renderer.EnableHtmlForInline && text.Content.Length == Inline.BlankMark.Length && text.Content.AsSpan().SequenceEqual(Inline.BlankMark))
                renderer.Write("<span class=\"blank\">").Write(Inline.BlankMark).Write("</span>");
            else if (renderer.EnableHtmlForInline && text.Content.AsSpan().ContainsAnyInRange('0', '9'))
                WithWhole(renderer, text.Content.AsSpan());
            else
                base.Write(renderer, text);
        }

        private static void WithWhole(HtmlRenderer renderer, ReadOnlySpan<char> text)
        {
            var from = 0;
            foreach (var whole in Whole().EnumerateMatches(text))
            {
                renderer.WriteEscape(text[from..whole.Index]);
                renderer.Write("<span class=\"f\">");
                renderer.WriteEscape(text.Slice(whole.Index, whole.Length));
                renderer.Write("</span>");
                from = whole.Index + whole.Length;
            }
            renderer.WriteEscape(text[from..]);
        }

        /// <summary>
        /// Feet and inches with their fraction, figures with the sign of their unit, and days, times from and to and numbers such as that of a phone or a
        /// license: their pieces are short, so that what is kept whole still fits into a narrow column.
        /// </summary>
        [GeneratedRegex("""
            (?<![\p{L}0-9]) (?:
              [0-9]+'-[0-9]+(?:\ [0-9]+)?(?:/[0-9]+)?" | [0-9]+\ [0-9]+/[0-9]+["']?
            | [0-9]+(?:[.,][0-9]+)?\ (?:mm2?|m|ft|Fuß|pies|A|V|W|°?C|s|%|ohm|Ohm|AWG)(?![\p{L}0-9])
            | (?:[0-9]{3}\ ){1,2}[0-9]{4}(?![\p{L}0-9]) | (?:[\p{L}0-9]{1,4}[-\u2013:]){1,3}[0-9]{1,5}(?![\p{L}0-9])
            | [0-9]{1,2}-\p{L}{3,5}(?![\p{L}0-9]) )
            """, RegexOptions.IgnorePatternWhitespace)]
        private static partial Regex Whole();
    }
}
