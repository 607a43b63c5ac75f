using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>A panel with its door open: its outputs in two columns as they stand, each with its unit.</summary>
internal static class PanelDrawing
{
    /// <summary>Draws it; returns the lines that it took.</summary>
    public static int Draw(Area area, Panel panel, Glyphs glyphs, int? selected)
    {
        if (panel.Type?.Outputs is not { } outputs || area.Width < 30)
            return 0;
        var rows = (outputs + 1) / 2;
        var frame = area.Part(0, 0, Math.Min(44, area.Width), Math.Min(area.Height, rows + 4));
        glyphs.Box(frame, Tone.Drawing, panel.Name);
        frame.Put(2, 1, "mains: licensed electrician only", Tone.Caution);
        var runs = panel.Runs.ToLookup(r => r.Output);
        for (var output = 1; output <= outputs; output++)
        {
            var (column, row) = ((output - 1) / rows, (output - 1) % rows);
            var tags = string.Join("+", runs[output].Select(r => r.Unit.Tag));
            frame.PutFit(2 + column * 20, 3 + row, 18, string.Create(CultureInfo.InvariantCulture, $"{output:00} {(tags.Length > 0 ? glyphs.Done : glyphs.Nothing)} {tags}"),
                output == selected ? Tone.Selected : runs[output].Skip(1).Any() ? Tone.Stop : tags.Length > 0 ? Tone.Strong : Tone.Dim);
        }
        return rows + 4;
    }
}
