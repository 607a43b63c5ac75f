using QRCoder;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Labels;

/// <summary>A sheet of labels to cut out.</summary>
internal static class LabelDrawing
{
    private const int Columns = 2;
    private const int Rows = 8;
    private const decimal Wide = 338;
    private const decimal High = 110;
    private const decimal CodeSide = 90;

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

    /// <summary>The fields of a code, true where dark, with the quiet border that readers need (ISO/IEC 18004: four fields).</summary>
    public static IReadOnlyList<System.Collections.BitArray> Fields(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        return data.ModuleMatrix;
    }

    private static void Label(Svg svg, CableEnd end, decimal x, decimal y, Words words)
    {
        svg.Box(x + 1, y + 1, Wide - 2, High - 2, Pen.Dashed);
        var fields = Fields(end.Code);
        svg.Fields(x + 8, y + 10, CodeSide / fields.Count, fields);
        var (left, room) = (x + CodeSide + 18, Wide - CodeSide - 26);
        svg.Text(left, y + 32, end.Label, size: 20, room: room, bold: true);
        svg.Text(left, y + 54, Ours($"{end.Run.Name}, at the {Ours(end.Where)}").Plain(words), size: 13, room: room);
        svg.Text(left, y + 74, end.Run.Unit.Window.Room?.Name ?? "–", size: 12, room: room);
        svg.Text(left, y + 94, end.Run is { Panel: { } panel, Output: { } output } ? Ours($"{panel.Name}, output {output}").Plain(words) : words.Of("not landed yet"), size: 12, room: room);
    }
}
