using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>Boxes of cable as bars, with the runs that are cut from them and what is left.</summary>
internal static class BoxCutsDrawing
{
    private const double Left = 64;
    private const double Wide = 596;
    private const double Line = 46;

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(IReadOnlyList<(BoxCuts Box, Inline Name)> boxes) =>
        Ours($"Cuts from boxes: {boxes.Select(b => Ours($"{b.Name}: {b.Box.Cuts.Select(c => c.Piece.Id).JoinOrDash(" + ")}")).JoinOrDash("; ")}");

    /// <summary>The drawing.</summary>
    public static Svg Of(IReadOnlyList<(BoxCuts Box, Inline Name)> boxes, House house, Words words)
    {
        var scale = Wide / boxes.Max(b => b.Box.Box.Length.InMetres());
        var svg = new Svg(Left + Wide + 16, boxes.Count * Line + 4 + Svg.LegendLine);
        for (var at = 0; at < boxes.Count; at++)
        {
            var ((box, name), y) = (boxes[at], at * Line + 2);
            svg.Text(Left - 8, y + 19, name.Plain(words), Anchored.End, 12, Left - 10, bold: true);
            foreach (var cut in box.Cuts)
            {
                var (from, to) = (Left + cut.From.InMetres() * scale, Left + cut.To.InMetres() * scale);
                svg.Box(from, y, to - from, 28, Pen.Thin, Fill.Light)
                    .Text((from + to) / 2, y + 18, cut.Piece.Id, Anchored.Middle, room: to - from - 4, bold: true);
                svg.Text(to, y + 40, Figure(cut.To.ShowRounded(house.DisplayUnits, LengthScale.Run)).Plain(words), Anchored.End);
            }
            svg.Box(Left, y, box.Box.Length.InMetres() * scale, 28, Pen.Thick);
            if (box.LeftOver.InMetres() * scale > 80)
                svg.Text(Left + box.Box.Length.InMetres() * scale - 6, y + 18,
                    Ours($"left {Figure(box.LeftOver.ShowRounded(house.DisplayUnits, LengthScale.Run))}").Plain(words), Anchored.End);
        }
        return svg.Legend(2, svg.Height - 4,
            words.Of("Bar: a box, from its loose end. Gray: the piece of a run, cut at the mark below its end. White: what is left."));
    }
}
