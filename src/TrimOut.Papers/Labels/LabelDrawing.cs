using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Labels;

/// <summary>A sheet of labels to cut out.</summary>
internal static class LabelDrawing
{
    private const int Columns = 2;
    private const int Rows = 8;
    private const double Wide = 338;
    private const double High = 110;
    private const double CodeSide = 90;

    // ISO/IEC 18004: a reader needs four light fields around a code.
    private const int QuietBorder = 4;

    /// <summary>How many labels stand on one sheet.</summary>
    public const int OnASheet = Columns * Rows;

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(IReadOnlyList<CableEnd> ends) => Ours($"Labels: {ends.Select(e => Join(" ", [e.Label, Ours(e.Where)])).JoinOrDash("; ")}");

    /// <summary>The drawing.</summary>
    public static Svg Of(IReadOnlyList<CableEnd> ends, Words words)
    {
        var svg = new Svg(Columns * Wide, (ends.Count + Columns - 1) / Columns * High);
        for (var at = 0; at < ends.Count; at++)
            Label(svg, ends[at], at % Columns * Wide, at / Columns * High, words);
        return svg;
    }

    private static void Label(Svg svg, CableEnd end, double x, double y, Words words)
    {
        svg.Box(x + 1, y + 1, Wide - 2, High - 2, Pen.Dashed);
        var (left, room) = (x + CodeSide + 18, Wide - CodeSide - 26);
        if (QrCode.Of(end.Code) is { } code)
        {
            var field = CodeSide / (code.Side + 2 * QuietBorder);
            svg.Fields(x + 8 + QuietBorder * field, y + 10 + QuietBorder * field, field, code);
        }
        else
        {
            svg.Text(x + 8, y + 54, words.Of("too long for a code"), room: CodeSide);
        }
        svg.Text(left, y + 32, end.Label, size: 20, room: room, bold: true);
        svg.Text(left, y + 54, Ours($"{end.Run.Name}, at the {Ours(end.Where)}").Plain(words), size: 13, room: room);
        svg.Text(left, y + 74, end.Run.Unit.Window.Room?.FullName ?? "–", size: 12, room: room);
        svg.Text(left, y + 94,
            end.Run is { Panel: { } panel, Output: { } output }
            ? Ours($"{panel.Name}, output {output}").Plain(words)
            : words.Of("not landed yet"), size: 12, room: room);
    }
}
