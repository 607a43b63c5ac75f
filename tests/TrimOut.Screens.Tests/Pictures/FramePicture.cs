using System.Globalization;
using System.Security;
using System.Text;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;
using TextStyle = Terminal.Gui.Drawing.TextStyle;

namespace TrimOut.Screens.Tests.Pictures;

/// <summary>A frame as an SVG picture: in the colours of the dark look where the reader's system is dark, of the sunlight look otherwise.</summary>
internal static class FramePicture
{
    /// <summary>Cells of 8 x 17: what most monospaced fonts take at 13 pixels.</summary>
    private const int CellWidth = 8;
    private const int CellHeight = 17;
    private const int Baseline = 13;
    private const int Margin = 8;

    /// <summary>The picture.</summary>
    /// <param name="frame">What is shown.</param>
    /// <param name="title">What it shows, for those who don't see it.</param>
    public static string Of(Frame frame, string title)
    {
        var (width, height) = (frame.Width * CellWidth + 2 * Margin, frame.Height * CellHeight + 2 * Margin);
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\" role=\"img\">\n");
        svg.Append(CultureInfo.InvariantCulture, $"<title>{SecurityElement.Escape(title)}</title>\n<style>\n");
        svg.Append("text { font: 13px ui-monospace, 'DejaVu Sans Mono', Menlo, Consolas, monospace; white-space: pre }\n");
        svg.Append(Colours(Look.Sunlight)).Append("@media (prefers-color-scheme: dark) {\n").Append(Colours(Look.Dark)).Append("}\n</style>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"bText\" width=\"{width}\" height=\"{height}\" rx=\"6\"/>\n");
        for (var y = 0; y < frame.Height; y++)
        {
            foreach (var (x, text, cells, tone) in Runs(frame.Row(y).ToArray()))
                Append(svg, Margin + x * CellWidth, Margin + y * CellHeight, text, cells, tone);
        }
        return svg.Append("</svg>\n").ToString();
    }

    private static void Append(StringBuilder svg, int x, int y, string text, int cells, Tone tone)
    {
        if (HasGround(tone))
            svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"b{tone}\" x=\"{x}\" y=\"{y}\" width=\"{cells * CellWidth}\" height=\"{CellHeight}\"/>\n");
        var begins = text.Length - text.TrimStart().Length;
        if (text.Trim() is not { Length: > 0 } shown)
            return;
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"f{tone}\" x=\"{x + begins * CellWidth}\" y=\"{y + Baseline}\" ");
        svg.Append(CultureInfo.InvariantCulture, $"textLength=\"{TextWidth.Of(shown) * CellWidth}\">{SecurityElement.Escape(shown)}</text>\n");
    }

    private static bool HasGround(Tone tone) => Palette.Of(Look.Dark, tone).Back != Palette.Of(Look.Dark, Tone.Text).Back;

    /// <summary>Cells of one tone in a row, with the column of the first. Spaces don't tell tones of one ground apart.</summary>
    private static IEnumerable<(int X, string Text, int Cells, Tone Tone)> Runs(Cell[] row)
    {
        for (var from = 0; from < row.Length;)
        {
            var to = from + 1;
            while (to < row.Length && row[to].Tone == row[from].Tone)
                to++;
            yield return (from, string.Concat(row[from..to].Select(c => c.Text)), to - from, row[from].Tone);
            from = to;
        }
    }

    private static string Colours(Look look)
    {
        var colours = new StringBuilder();
        foreach (var tone in Enum.GetValues<Tone>())
        {
            var paint = Palette.Of(look, tone);
            var weight = paint.Style.HasFlag(TextStyle.Bold) ? "; font-weight: bold" : "";
            colours.Append(CultureInfo.InvariantCulture, $".f{tone} {{ fill: {Hex(paint.Front!.Value)}{weight} }} .b{tone} {{ fill: {Hex(paint.Back!.Value)} }}\n");
        }
        return colours.ToString();
    }

    private static string Hex(byte index)
    {
        var (r, g, b) = Paint.Rgb(index);
        return string.Create(CultureInfo.InvariantCulture, $"#{r:x2}{g:x2}{b:x2}");
    }
}
