using System.Globalization;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>The phases across the sheet: each with its number, which heads its column below, its open stops, its name in full, and how far it is.</summary>
internal static class Ribbon
{
    /// <summary>A sum needs so many cells.</summary>
    private const int LeastCells = 5;

    /// <summary>Draws it; returns the lines that it took.</summary>
    public static int Draw(Area area, ScreenContext context, Phase? shown)
    {
        var whole = PhaseNames.All.Sum(p => Cells([p.Full()])) < area.Width;
        var names = PhaseNames.All.ToDictionary(p => p, p => whole ? [p.Full()] : InLines(p.Full()));
        var lines = names.Values.Max(n => n.Length);
        var spare = Math.Max(0, area.Width - 1 - names.Values.Sum(Cells)) / PhaseNames.All.Count;
        var x = 1;
        foreach (var phase in PhaseNames.All)
        {
            var name = names[phase];
            var cells = Cells(name) - 1;
            var number = Number(phase);
            area.Put(x, 0, number, Tone.Dim);
            if (context.Report.StopsIn(phase) is > 0 and var stops)
            {
                var counted = FindingSigns.Counted(context.Glyphs.Stop, stops);
                var room = cells + spare - number.Length - 1;
                area.Put(x + number.Length + 1, 0, counted.Length <= room ? counted : context.Glyphs.Stop, Tone.Stop);
            }
            for (var y = 0; y < name.Length; y++)
                area.Put(x, lines - name.Length + 1 + y, name[y], phase == shown ? Tone.Selected : Tone.Heading);
            var sum = context.SumOf(phase);
            area.PutFit(x, lines + 1, cells, PhaseMarks.Sum(sum, cells, context.Glyphs), sum.Complete && sum.Total > 0 ? context.Good : Tone.Text);
            x += cells + 1 + spare;
        }
        return lines + 2;
    }

    /// <summary>The number of a phase, from 1.</summary>
    public static string Number(Phase phase) => ((int)phase + 1).ToString(CultureInfo.InvariantCulture);

    private static int Cells(string[] name) => Math.Max(LeastCells, name.Max(n => n.Length)) + 1;

    private static string[] InLines(string name) => name.IndexOf('-', StringComparison.Ordinal) is > 0 and var hyphen
        ? [name[..(hyphen + 1)], name[(hyphen + 1)..]]
        : [name];
}
