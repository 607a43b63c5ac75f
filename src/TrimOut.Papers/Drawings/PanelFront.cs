using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>A panel with its outputs in the order of their numbers: what is landed on each.</summary>
internal static class PanelFront
{
    private const int MostInARow = 8;
    private const double MostWide = 128;
    private const double High = 68;

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(Panel panel, IReadOnlyCollection<HomeRun> landed) =>
        landed.Where(r => r.Output is not null).OrderBy(r => r.Output).ToList() is { Count: > 0 } used
            ? Ours($"Panel {panel.Name}: {Count(panel)} outputs, {used.Count} in use; by output: " +
                $"{used.Select(r => $"{r.Output} {r.Name}").JoinOrDash()}")
            : Ours($"Panel {panel.Name}: {Count(panel)} outputs, all free");

    private static Inline Count(Panel panel) =>
        panel.Type?.Outputs is not null ? panel.Type.EntryOfSheet(PanelTypeFacts.Outputs) : Number(panel.OutputNumbers.Count);

    /// <summary>The drawing.</summary>
    public static Svg Of(Panel panel, IReadOnlyCollection<HomeRun> landed, Words words)
    {
        var outputs = panel.OutputNumbers;
        var rows = Math.Max(1, (outputs.Count + MostInARow - 1) / MostInARow);
        var inARow = Math.Max(1, (outputs.Count + rows - 1) / rows);
        var wide = Math.Min(MostWide, (Svg.Widest - 40) / inARow);
        var svg = new Svg(inARow * wide + 16, 36 + rows * (High + 8) + 4);
        svg.Box(1, 1, svg.Width - 2, svg.Height - 2, Pen.Thick)
            .Text(12, 22, Ours($"Panel {panel.Name}").Plain(words), size: 14, room: svg.Width - 24, bold: true);
        var runs = landed.Where(r => r.Output is not null).ToLookup(r => r.Output!.Value);
        var notWanted = panel.NotWanted.ToLookup(n => n.Output, n => panel.House.NameOf(n.Run));
        for (var at = 0; at < outputs.Count; at++)
        {
            var (x, y) = (8 + at % inARow * wide, 32 + at / inARow * (High + 8));
            Output(svg, x, y, wide, outputs[at], panel.HasNo(outputs[at]), [.. runs[outputs[at]]], notWanted[outputs[at]].FirstOrDefault(), words);
        }
        var legend = "Box: an output with its number and two terminals; the panel itself says which is plus. Not to scale.";
        return svg.Legend(2, svg.Height + Svg.LegendLine - 2, outputs.Any(panel.HasNo)
            ? $"{words.Of(legend)} {words.Of("Dashed: the panel has no such output.")}" : words.Of(legend));
    }

    private static void Output(Svg svg, double x, double y, double wide, int output, bool isNotThere, List<HomeRun> runs, string? notWanted,
        Words words)
    {
        svg.Box(x + 2, y, wide - 4, High, isNotThere ? Pen.Dashed : runs.Count > 0 ? Pen.Thin : Pen.Hair);
        svg.Text(x + 8, y + 14, output.ToString(CultureInfo.InvariantCulture));
        if (!isNotThere)
            svg.Circle(x + wide - 24, y + 10, 4).Circle(x + wide - 12, y + 10, 4);
        if (runs.Count == 0)
        {
            svg.Text(x + wide / 2, y + 38, notWanted ?? words.Of("free"), Anchored.Middle, room: wide - 8);
            if (notWanted is not null)
                svg.Text(x + wide / 2, y + 53, words.Of("not wanted"), Anchored.Middle, room: wide - 8);
            return;
        }
        if (runs.Count > 1)
        {
            // Several on one output is a fault, and each is named: the table has their rooms.
            for (var at = 0; at < Math.Min(runs.Count, 3); at++)
                svg.Text(x + wide / 2, y + 30 + 15 * at, at == 2 && runs.Count > 3 ? "…" : runs[at].Name, Anchored.Middle, 12, wide - 8, bold: true);
            return;
        }
        svg.Text(x + wide / 2, y + 32, runs[0].Name, Anchored.Middle, 13, wide - 8, bold: true);
        svg.Text(x + wide / 2, y + 47, runs[0].Unit.Window.Room?.FullName ?? "", Anchored.Middle, room: wide - 8);
        svg.Text(x + wide / 2, y + 61, runs[0].LabelAtPanel ?? "", Anchored.Middle, room: wide - 8);
    }
}
