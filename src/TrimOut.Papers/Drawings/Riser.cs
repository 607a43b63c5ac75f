using System.Collections.Immutable;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>How the home runs go from the panels to the floors: one box per run on its floor, the floor that is walked first at the bottom.</summary>
internal static class Riser
{
    private const double Width = 676;
    private const double BandLeft = 96;
    private const double BoxWide = 106;
    private const double BoxHigh = 36;
    private const int InARow = 5;

    private const int RowsOnASheet = 18;

    /// <summary>As many panels stand below the floors; of more, each box names its own, and no line is drawn.</summary>
    private const int MostPanels = 7;

    /// <summary>From one trunk to the next.</summary>
    private const double Apart = 7;

    /// <summary>The runs of a floor, or as many of them as one page takes.</summary>
    /// <param name="Name">The floor's name; empty where none was noted.</param>
    /// <param name="Runs">Its runs.</param>
    public sealed record Floor(string Name, IReadOnlyList<HomeRun> Runs);

    /// <summary>The floors of a house in walking order, as many to a drawing as one page takes.</summary>
    public static IEnumerable<IReadOnlyList<Floor>> Sheets(House house)
    {
        var sheet = new List<Floor>();
        foreach (var floor in house.Runs.GroupBy(r => r.Unit.Window.Room?.Floor ?? ""))
        {
            foreach (var runs in floor.Chunk((RowsOnASheet - 1) * InARow))
            {
                if (sheet.Sum(f => Rows(f.Runs.Count) + 1) + Rows(runs.Length) > RowsOnASheet)
                {
                    yield return sheet;
                    sheet = [];
                }
                sheet.Add(new Floor(floor.Key, runs));
            }
        }
        if (sheet.Count > 0)
            yield return sheet;
    }

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(IReadOnlyList<Floor> sheet) =>
        Ours($"Riser of {sheet.Sum(f => f.Runs.Count)} home runs by floor: " +
            $"{sheet.Select(f => Ours($"{f.Name.OrDash()}: {f.Runs.Select(r => r.Name).JoinOrDash()}")).JoinOrDash("; ")}");

    /// <summary>The drawing.</summary>
    public static Svg Of(House house, IReadOnlyList<Floor> sheet, Words words)
    {
        var floors = sheet.Reverse().ToList();
        var heights = floors.Select(f => 30 + Rows(f.Runs.Count) * (BoxHigh + 6) + 4).ToList();
        var panels = house.Panels.Length <= MostPanels ? house.Panels : [];
        var panelTop = heights.Sum() + 10 * floors.Count + Apart * panels.Length + 4;
        var svg = new Svg(Width, panelTop + (panels.Length > 0 ? 34 : 4) + 2 * Svg.LegendLine);
        var y = 0.0;
        for (var at = 0; at < floors.Count; at++)
        {
            Band(svg, floors[at], y, heights[at], words);
            Trunks(svg, panels, floors[at].Runs.CountBy(r => r.Panel?.Id ?? "").ToDictionary(), y, heights[at], panelTop, words);
            y += heights[at] + 10;
        }
        foreach (var (at, panel) in panels.Index())
        {
            var x = 2.0 + at * 92;
            svg.Box(x, panelTop, 84, 28, Pen.Thick, Fill.White).Text(x + 42, panelTop + 18, panel.Name, Anchored.Middle, room: 78, bold: true);
        }
        return svg.Legend(2, svg.Height - 4 - Svg.LegendLine,
            [words.Of("Box: a home run, its panel and its length one way; gray once it has a panel."),
            .. panels.Length > 0 ? [words.Of("Line: from a panel to a floor, with the number of cables. Not to scale.")] : Array.Empty<string>()]);
    }

    private static void Band(Svg svg, Floor floor, double y, double high, Words words)
    {
        svg.Box(BandLeft, y + 1, Width - BandLeft - 2, high);
        svg.Text(BandLeft + 8, y + 18, floor.Name.Length > 0 ? floor.Name : words.Of("(no floor noted)"), size: 12, room: 360, bold: true);
        for (var at = 0; at < floor.Runs.Count; at++)
        {
            var (left, top) = (BandLeft + 10 + at % InARow * (BoxWide + 7), y + 26 + at / InARow * (BoxHigh + 6));
            var run = floor.Runs[at];
            svg.Box(left, top, BoxWide, BoxHigh, Pen.Thin, run.Panel is null ? Fill.None : Fill.Light);
            svg.Text(left + BoxWide / 2, top + 14, run.Name, Anchored.Middle, 12, BoxWide - 4, bold: true);
            var length = (run.OneWay?.ShowRounded(run.House.DisplayUnits, LengthScale.Run)).FigureOrDash().Plain(words);
            svg.Text(left + BoxWide / 2, top + 29, $"{run.Panel?.Name ?? "–"} · {length}", Anchored.Middle, room: BoxWide - 4);
        }
    }

    /// <summary>
    /// A line from each panel to a floor that it feeds, with how many cables go there. All rise on the left, the later panels' further right and turning
    /// off further up, so that below the floors no line meets another.
    /// </summary>
    private static void Trunks(Svg svg, ImmutableArray<Panel> panels, Dictionary<string, int> perPanel, double y, double high, double panelTop,
        Words words)
    {
        foreach (var (at, panel) in panels.Index())
        {
            if (!perPanel.TryGetValue(panel.Id, out var cables))
                continue;
            var (x, level, turn) = (8 + at * Apart, panelTop - Apart * (at + 1), y + Math.Min(high - 6, 18 + at * 16));
            var foot = 2 + at * 92 + 42;
            svg.Path([(foot, panelTop), (foot, level), (x, level), (x, turn), (BandLeft, turn)], Pen.Thin);
            svg.Text(BandLeft - 4, turn - 3, Ours($"{cables} ×").Plain(words), Anchored.End);
        }
    }

    private static int Rows(int runs) => (runs + InARow - 1) / InARow;
}
