using System.Buffers;
using System.Net;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace TrimOut.Papers.Writing;

/// <summary>
/// Writes tables so that a reader who hears them, and one who has them on a phone, knows what each cell is: the heading above is the caption, the cells of the
/// head and the first of each row say what they are the head of, and in a wide table each cell carries the name of its column.
/// </summary>
/// <remarks>Cells that hold no more than a tag, a word, figures with their unit or a day are marked: these stay on one line.</remarks>
/// <param name="caption">The heading that a table stands under, as HTML; asked for each table.</param>
/// <param name="part">The room, the panel or the like that it is of, which each card names on a phone; empty for none.</param>
internal sealed class HtmlTables(Func<string> caption, Func<string> part) : HtmlObjectRenderer<Table>
{
    /// <summary>A table with more columns becomes cards on a phone.</summary>
    private const int Narrow = 2;

    private const int Short = 10;
    private const int ShortWord = 12;
    private const int ShortFigures = 24;
    private static readonly SearchValues<char> OfFigures = SearchValues.Create("0123456789 /.,x'\"-");

    protected override void Write(HtmlRenderer renderer, Table table)
    {
        var head = (TableRow)table[0];
        var wide = head.Count > Narrow;
        var names = new string[head.Count];
        renderer.EnsureLine();
        renderer.Write(wide ? "<table class=\"wide\">\n" : "<table>\n");
        if (caption() is { Length: > 0 } about)
            renderer.Write("<caption>").Write(about).Write("</caption>\n");
        renderer.Write("<thead>\n<tr>\n");
        for (var column = 0; column < head.Count; column++)
        {
            var cell = (TableCell)head[column];
            names[column] = wide ? WebUtility.HtmlEncode(TextOf(cell)) : "";
            renderer.Write("<th scope=\"col\">");
            Inside(renderer, cell).Write("</th>\n");
        }
        renderer.Write("</tr>\n</thead>\n<tbody>\n");
        for (var row = 1; row < table.Count; row++)
            Row(renderer, (TableRow)table[row], wide ? names : null, wide ? part() : "");
        renderer.Write("</tbody>\n</table>\n");
    }

    private static void Row(HtmlRenderer renderer, TableRow row, string[]? names, string of)
    {
        renderer.Write("<tr>\n");
        for (var column = 0; column < row.Count; column++)
        {
            var cell = (TableCell)row[column];
            renderer.Write(column == 0 ? "<th scope=\"row\"" : "<td");
            if (StaysWhole(cell))
                renderer.Write(" class=\"k\"");
            if (names is not null && column < names.Length)
                renderer.Write(" data-label=\"").Write(names[column]).Write('"');
            if (column == 0 && of.Length > 0)
                renderer.Write(" data-of=\"").Write(of).Write('"');
            renderer.Write('>');
            Inside(renderer, cell).Write(column == 0 ? "</th>\n" : "</td>\n");
        }
        renderer.Write("</tr>\n");
    }

    private static HtmlRenderer Inside(HtmlRenderer renderer, TableCell cell)
    {
        var before = renderer.ImplicitParagraph;
        renderer.ImplicitParagraph = true;
        renderer.WriteChildren(cell);
        renderer.ImplicitParagraph = before;
        return renderer;
    }

    private static string TextOf(TableCell cell) => string.Concat(cell.Descendants<LiteralInline>().Select(l => l.Content.ToString()));

    /// <summary>Whether it is short, one word that is not long, or no more than some figures with their unit.</summary>
    private static bool StaysWhole(TableCell cell)
    {
        if (cell is not [ParagraphBlock { Inline: { FirstChild: LiteralInline only } inline }] || inline.LastChild != only)
            return false;
        var text = only.Content.AsSpan();
        var unit = text.LastIndexOf(' ') + 1;
        return text.Length <= Short || text.Length <= ShortWord && IsWord(text)
            || text.Length <= ShortFigures && unit > 0 && text[..unit].IndexOfAnyExcept(OfFigures) < 0;
    }

    private static bool IsWord(ReadOnlySpan<char> text)
    {
        foreach (var letter in text)
        {
            if (!char.IsLetter(letter))
                return false;
        }
        return true;
    }
}
