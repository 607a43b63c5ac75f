using System.Globalization;
using Terminal.Gui.Text;
using TrimOut.Core;

namespace TrimOut.Screens.Frames;

/// <summary>How many cells text takes on a terminal, and how to make it fit.</summary>
internal static class TextWidth
{
    /// <summary>Stands where text is cut.</summary>
    public const char Cut = '…';

    public static int Of(string text) => Graphemes(text).Sum(g => g.Columns);

    /// <summary>The grapheme clusters of a text with the cells that each takes; those that take none are left out.</summary>
    public static IEnumerable<(string Text, int Columns)> Graphemes(string text)
    {
        var at = StringInfo.GetTextElementEnumerator(ShownText.Line(text));
        while (at.MoveNext())
        {
            var grapheme = at.GetTextElement();
            var columns = grapheme.Length == 1 && grapheme[0] < 127 ? 1 : Math.Min(2, grapheme.GetColumns());
            if (columns > 0)
                yield return (grapheme, columns);
        }
    }

    /// <summary>The text, cut with an ellipsis where it takes more than so many cells.</summary>
    public static string Fit(string text, int cells)
    {
        if (cells <= 0)
            return "";
        text = ShownText.Line(text);
        if (text.Length <= cells && text.All(c => c < 127))
            return text;
        if (Of(text) <= cells)
            return text;
        var (kept, used) = ("", 0);
        foreach (var (grapheme, columns) in Graphemes(text))
        {
            if (used + columns > cells - 1)
                break;
            (kept, used) = (kept + grapheme, used + columns);
        }
        return kept + Cut;
    }

    /// <summary>The text in lines of at most so many cells, and at most so many of them: the last one says when the text goes on.</summary>
    /// <param name="text">The text.</param>
    /// <param name="cells">How wide a line is.</param>
    /// <param name="lines">How many lines there is room for.</param>
    /// <param name="whole">Whether all of it is there.</param>
    public static IReadOnlyList<string> Wrap(string text, int cells, int lines, out bool whole)
    {
        List<string> all = [.. Wrap(text, cells).Take(Math.Max(0, lines) + 1)];
        whole = all.Count <= lines;
        if (whole)
            return all;
        all.RemoveAt(all.Count - 1);
        if (all.Count > 0)
            all[^1] = Fit($"{all[^1]} {Cut}", cells);
        return all;
    }

    /// <summary>The text in lines of at most so many cells, broken at spaces where there are any.</summary>
    public static IEnumerable<string> Wrap(string text, int cells)
    {
        if (cells <= 0)
            yield break;
        var line = "";
        foreach (var word in ShownText.Line(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word;
            while (Of(rest) > cells)
            {
                if (line.Length > 0)
                {
                    yield return line;
                    line = "";
                }
                var (head, used) = ("", 0);
                foreach (var (grapheme, columns) in Graphemes(rest))
                {
                    if (used + columns > cells)
                        break;
                    (head, used) = (head + grapheme, used + columns);
                }
                if (head.Length == 0)
                    yield break;
                yield return head;
                rest = rest[head.Length..];
            }
            if (line.Length == 0)
                line = rest;
            else if (Of(line) + 1 + Of(rest) <= cells)
                line += " " + rest;
            else
            {
                yield return line;
                line = rest;
            }
        }
        if (line.Length > 0)
            yield return line;
    }
}
