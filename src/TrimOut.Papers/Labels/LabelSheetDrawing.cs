using System.Globalization;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Labels;

/// <summary>A sheet of labels in its true size, and the print that is held against one before any label is used up.</summary>
internal static class LabelSheetDrawing
{
    /// <summary>A drawing's own units in a millimetre.</summary>
    public const double PerMillimetre = 4;

    // ISO/IEC 18004: a reader needs four light fields around a code.
    private const int QuietBorder = 4;

    private const double Padding = 6;
    private const double MostOfWidth = 0.4;
    private const double LargestText = 22;
    private const double SmallestText = 6;

    // A sheet as high as the page to the last fraction can break onto a second one.
    private const double ShortOfPage = 1;

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(IReadOnlyList<CableEnd> ends) => Ours($"Labels: {ends.Select(e => Join(" ", [e.Label, Ours(e.Where)])).JoinOrDash("; ")}");

    /// <summary>What the test print shows, in words.</summary>
    public static Inline DescribeTest(LabelGrid grid) => Ours(
        $"Test print: {grid.Rows} x {grid.Columns} outlines of {Size(grid.Wide)} x {Size(grid.High)}, rulers along the edges");

    /// <summary>The labels of one sheet, row by row.</summary>
    public static Svg Of(IReadOnlyList<CableEnd> ends, LabelGrid grid, Words words)
    {
        var svg = Empty(grid);
        // Making the codes takes most of the time of all papers together, and no code waits for another.
        var codes = ends.Select(e => e.Code).ToArray().AsParallel().AsOrdered().Select(QrCode.Of).ToArray();
        foreach (var (at, end) in ends.Index())
        {
            var (x, y) = At(grid, at);
            if (grid.CutOut)
                svg.Box(x + 1, y + 1, On(grid.Wide) - 2, On(grid.High) - 2, Pen.Dashed, part: "label");
            if (end.IsWrong)
                Wrong(svg, end, x, y, On(grid.Wide), On(grid.High), words);
            else
                Label(svg, end, codes[at], x, y, On(grid.Wide), On(grid.High), words);
        }
        return svg;
    }

    /// <summary>The outline of every label, millimetres along the top and the left edge, inches along the bottom and the right one.</summary>
    public static Svg Test(LabelGrid grid, Words words)
    {
        var svg = Empty(grid);
        for (var at = 0; at < grid.OnASheet; at++)
        {
            var (x, y) = At(grid, at);
            svg.Box(x, y, On(grid.Wide), On(grid.High), Pen.Hair, part: "label");
        }
        Rulers(svg, grid);
        var (middle, line) = (svg.Width / 2, svg.Height / 2);
        svg.Box(middle - 300, line - 44, 600, 76, Pen.Thin, Fill.White);
        Say(line - 24, "Test print, on plain paper, at 100 %: no fitting to the page.", 14, bold: true);
        Say(line - 4, grid.CutOut ? "A tape on each ruler must agree."
            : "A tape on each ruler must agree. Hold it against a sheet of labels before a light:", 12);
        Say(line + 14, grid.CutOut ? "If not, print again at 100 %, and not fitted to the page."
            : "each outline lies on a label. If not, change the margins by what it is off.", 12);
        return svg;

        void Say(double y, string text, double size, bool bold = false)
        {
            var said = words.Of(text);
            svg.Text(middle, y, said, Anchored.Middle, Math.Min(size, size * 0.99 * 590 / Svg.WidthOf(said, size, bold)), 590, bold);
        }
    }

    private static Svg Empty(LabelGrid grid) => new(On(grid.SheetWide), On(grid.SheetHigh) - ShortOfPage) { Part = grid.IsLetter ? "letter" : "a4" };

    private static (double X, double Y) At(LabelGrid grid, int at) => (
        On(grid.Left + (grid.Wide + grid.Across) * (at % grid.Columns)), On(grid.Top + (grid.High + grid.Down) * (at / grid.Columns)));

    /// <summary>In the place of a label that would be stuck on wrong again.</summary>
    private static void Wrong(Svg svg, CableEnd end, double x, double y, double wide, double high, Words words)
    {
        var (left, room, line) = (x + 2 * Padding, wide - 4 * Padding, (high - 2 * Padding) / 4.4);
        Lettering(svg, left, y + Padding + line * 1.2, words.Of("No label: to be put right first"), Math.Min(LargestText, line), room, bold: true);
        Lettering(svg, left, y + Padding + line * 2.3, Ours($"{end.Run.Name}, at the {Ours(end.Where)}").Plain(words), line * 0.75, room);
        Lettering(svg, left, y + Padding + line * 3.3, words.Of("It stands on the first page of this paper."), line * 0.7, room);
    }

    private static void Label(Svg svg, CableEnd end, QrCode? code, double x, double y, double wide, double high, Words words)
    {
        var side = Math.Min(high - 2 * Padding, wide * MostOfWidth);
        if (code is not null)
        {
            var field = side / (code.Side + 2 * QuietBorder);
            svg.Fields(x + Padding + QuietBorder * field, y + (high - side) / 2 + QuietBorder * field, field, code);
        }
        else
        {
            svg.Text(x + Padding, y + high / 2, words.Of("too long for a code"), size: 8, room: side);
        }
        var (left, room, line) = (x + side + 2 * Padding, wide - side - 3 * Padding, (high - 2 * Padding) / 4.4);
        Lettering(svg, left, y + Padding + line * 1.2, end.Label, Math.Min(LargestText, line * 1.2), room, bold: true);
        Lettering(svg, left, y + Padding + line * 2.3, Ours($"{end.Run.Name}, at the {Ours(end.Where)}").Plain(words), line * 0.75, room);
        Lettering(svg, left, y + Padding + line * 3.3, end.Run.Unit.Window.Room?.FullName ?? "–", line * 0.7, room);
        Lettering(svg, left, y + Padding + line * 4.2, end.Run is { Panel: { } panel, Output: { } output }
            ? Ours($"{panel.Name}, output {output}").Plain(words)
            : words.Of("not landed yet"), line * 0.7, room);
    }

    /// <summary>A line that is made smaller before it is cut: a label that is cut names no cable.</summary>
    private static void Lettering(Svg svg, double x, double y, string text, double size, double room, bool bold = false)
    {
        var most = Math.Min(size, LargestText);
        // A trifle less than what fits, so that no rounding cuts a letter.
        var fits = most * Math.Min(1, 0.99 * room / Math.Max(1, Svg.WidthOf(text, most, bold)));
        svg.Text(x, y, text, size: Math.Max(SmallestText, fits), room: room, bold: bold);
    }

    private static void Rulers(Svg svg, LabelGrid grid)
    {
        for (var millimetre = 1; millimetre < (double)grid.SheetHigh.Millimetres; millimetre++)
        {
            var (at, tick) = (millimetre * PerMillimetre, millimetre % 10 == 0 ? 16 : millimetre % 5 == 0 ? 11 : 6);
            var figure = millimetre % 10 == 0 ? (millimetre / 10).ToString(CultureInfo.InvariantCulture) + (millimetre == 10 ? " cm" : "") : null;
            if (millimetre < (double)grid.SheetWide.Millimetres)
            {
                svg.Line(at, 0, at, tick, Pen.Hair);
                Figure(svg, at + 2, 26, figure);
            }
            svg.Line(0, at, tick, at, Pen.Hair);
            Figure(svg, 18, at + 4, figure);
        }
        for (var eighth = 1; eighth < (double)grid.SheetHigh.Inches * 8; eighth++)
        {
            var (at, tick) = (eighth * 25.4 / 8 * PerMillimetre, eighth % 8 == 0 ? 16 : eighth % 4 == 0 ? 11 : 6);
            var figure = eighth % 8 == 0 ? (eighth / 8).ToString(CultureInfo.InvariantCulture) + "\"" : null;
            if (eighth < (double)grid.SheetWide.Inches * 8)
            {
                svg.Line(at, svg.Height - tick, at, svg.Height, Pen.Hair);
                Figure(svg, at + 2, svg.Height - 18, figure);
            }
            svg.Line(svg.Width - tick, at, svg.Width, at, Pen.Hair);
            Figure(svg, svg.Width - 32, at + 4, figure);
        }
    }

    private static void Figure(Svg svg, double x, double y, string? figure)
    {
        if (figure is not null)
            svg.Text(x, y, figure, size: 9);
    }

    private static double On(Length length) => length.InMillimetres() * PerMillimetre;

    private static Inline Size(Length length) => Inline.Figure(length.ShowRounded(DisplayUnits.Millimetres));
}
