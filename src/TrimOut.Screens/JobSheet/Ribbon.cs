using System.Globalization;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>
/// The phases across the sheet: each with its number, which heads its column below, its open stops, its name in full, and how far it is. Folded it is one line
/// of numbers, marks and stops, and the names of as many phases as have room.
/// </summary>
internal static class Ribbon
{
    /// <summary>A sum needs so many cells.</summary>
    private const int LeastCells = 5;

    /// <summary>Draws it in one line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="context">What is seen.</param>
    /// <param name="shown">The phase that is shown, which is named in any case; null for the one that the crew works in.</param>
    public static void DrawFolded(Area line, ScreenContext context, Phase? shown)
    {
        var named = shown ?? context.Head.Next?.Step.Phase ?? Phase.Handover;
        // All names, or that of one phase alone: some of them would look like all there are.
        var all = PhaseNames.All.Sum(p => Folded(p, context, true).Sum(t => TextWidth.Of(t.Text)) + 2) < line.Width;
        var x = 1;
        foreach (var phase in PhaseNames.All)
        {
            foreach (var (text, tone) in Folded(phase, context, all))
                x = line.Put(x, 0, text, phase == shown && tone != Tone.Stop ? Tone.Selected : tone);
            x += all ? 2 : 1;
        }
        if (all)
            return;
        var sum = context.SumOf(named);
        var words = $"{Number(named)} {named.Full()} {PhaseMarks.Sum(sum, line.Width, context.Glyphs)}";
        if (x + 1 + TextWidth.Of(words) > line.Width)
            words = $"{Number(named)} {named.Full()}";
        line.PutFit(x + 1, 0, line.Width - x - 1, words, named == shown ? Tone.Selected : Tone.Heading);
    }

    /// <summary>A phase in the folded line: how far it is as a mark, its number, its name where there is room, and its stops.</summary>
    private static IEnumerable<(string Text, Tone Tone)> Folded(Phase phase, ScreenContext context, bool named)
    {
        var mark = PhaseMarks.Of(context.SumOf(phase)).Drawn(context.Glyphs);
        yield return ($"{mark}{Number(phase)}{(named ? " " + phase.Full() : "")}", Tone.Heading);
        if (context.Report.StopsIn(phase) is > 0 and var stops)
            yield return ((named ? " " : "") + FindingSigns.Counted(context.Glyphs.Stop, stops), Tone.Stop);
    }

    /// <summary>Draws it with every name in full; returns the lines that it took.</summary>
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
