using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>A panel with its door open: its outputs in two columns as they stand, each with its unit.</summary>
internal static class PanelDrawing
{
    /// <summary>Columns that the whole of it takes.</summary>
    public const int Width = 44;

    /// <summary>An output that a run is on.</summary>
    public static readonly Sign Used = new(g => g.Done, "in the picture of a panel: a run is on this output");

    /// <summary>An output that is free.</summary>
    public static readonly Sign Free = new(g => g.Nothing, "in the picture of a panel: this output is free");

    private const string Mains = "mains: licensed electrician only";

    /// <summary>Draws it; returns the lines that it took, none where there is no room for all of it.</summary>
    public static int Draw(Area area, Panel panel, Glyphs glyphs, int? selected, Func<HomeRun, bool>? isWrong = null)
    {
        if (panel.Type?.Outputs is not { } outputs || area.Width < TextWidth.Of(Mains) + 4)
            return 0;
        var rows = (outputs + 1) / 2;
        if (area.Height < rows + 4)
            return 0;
        var frame = area.Part(0, 0, Math.Min(Width, area.Width), rows + 4);
        glyphs.Box(frame, Tone.Drawing, panel.Name);
        frame.Put(2, 1, Mains, Tone.Caution);
        var runs = panel.Runs.ToLookup(r => r.Output);
        var column = (frame.Width - 4) / 2;
        for (var output = 1; output <= outputs; output++)
        {
            var (at, row) = ((output - 1) / rows, (output - 1) % rows);
            var tags = string.Join("+", runs[output].Select(r => r.Unit.Tag));
            var stop = runs[output].Skip(1).Any() || (isWrong is not null && runs[output].Any(isWrong));
            var tone = output == selected ? Tone.Selected : tags.Length > 0 ? Tone.Strong : Tone.Dim;
            var x = frame.Put(2 + at * column, 3 + row, string.Create(CultureInfo.InvariantCulture, $"{output:00} "), tone);
            x = frame.Put(x, 3 + row, (stop ? FindingSigns.Stop : tags.Length > 0 ? Used : Free).Drawn(glyphs), stop ? Tone.Stop : tone);
            frame.PutFit(x, 3 + row, 2 + at * column + column - 1 - x, " " + tags, tone);
        }
        return rows + 4;
    }
}
