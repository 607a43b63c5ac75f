using System.Globalization;
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
            ? Ours($"Panel {panel.Name}: {Outputs(panel, landed)} outputs, {used.Count} in use; by output: " +
                $"{used.Select(r => $"{r.Output} {r.Name}").JoinOrDash()}")
            : Ours($"Panel {panel.Name}: {Outputs(panel, landed)} outputs, all free");

    /// <summary>How many outputs there are to draw: those of the sheet, and any that a run is said to land on.</summary>
    public static int Outputs(Panel panel, IEnumerable<HomeRun> landed) =>
        Math.Max(panel.Type?.Outputs ?? 0, landed.Select(r => r.Output ?? 0).DefaultIfEmpty().Max());

    /// <summary>The drawing.</summary>
    public static Svg Of(Panel panel, IReadOnlyCollection<HomeRun> landed, Words words)
    {
        var outputs = Outputs(panel, landed);
        var rows = Math.Max(1, (outputs + MostInARow - 1) / MostInARow);
        var inARow = Math.Max(1, (outputs + rows - 1) / rows);
        var wide = Math.Min(MostWide, (Svg.Widest - 40) / inARow);
        var svg = new Svg(inARow * wide + 16, 36 + rows * (High + 8) + 4);
        svg.Box(1, 1, svg.Width - 2, svg.Height - 2, Pen.Thick)
            .Text(12, 22, Ours($"Panel {panel.Name}").Plain(words), size: 14, room: svg.Width - 24, bold: true);
        var runs = landed.Where(r => r.Output is not null).ToLookup(r => r.Output!.Value);
        for (var output = 1; output <= outputs; output++)
        {
            var (x, y) = (8 + (output - 1) % inARow * wide, 32 + (output - 1) / inARow * (High + 8));
            Output(svg, x, y, wide, output, [.. runs[output]], words);
        }
        return svg.Legend(2, svg.Height + Svg.LegendLine - 2,
            words.Of("Box: an output with its number and two terminals; the panel itself says which is plus. Not to scale."));
    }

    private static void Output(Svg svg, double x, double y, double wide, int output, List<HomeRun> runs, Words words)
    {
        svg.Box(x + 2, y, wide - 4, High, runs.Count > 0 ? Pen.Thin : Pen.Hair);
        svg.Text(x + 8, y + 14, output.ToString(CultureInfo.InvariantCulture));
        svg.Circle(x + wide - 24, y + 10, 4).Circle(x + wide - 12, y + 10, 4, fill: Fill.Black);
        if (runs.Count == 0)
        {
            svg.Text(x + wide / 2, y + 38, words.Of("free"), Anchored.Middle);
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
