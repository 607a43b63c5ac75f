using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>A window as seen from inside the room, to scale in character cells: units, lead side, entry, tail.</summary>
internal static class WindowDrawing
{
    /// <summary>A character cell is about twice as high as it is wide.</summary>
    private const decimal CellAspect = 2;

    /// <summary>Room beside the opening for a tail that hangs on the wall.</summary>
    private const int Beside = 2;

    private const int LeastColumns = 8;

    private const int LeastRows = 4;

    /// <summary>Draws the window that a unit hangs in; returns the number of lines it took.</summary>
    public static int Draw(Area area, Unit unit, Glyphs glyphs)
    {
        var window = unit.Window;
        var units = unit.House.DisplayUnits;
        if (window.KnownWidth is not { } width || window.KnownHeight is not { } height || width <= Length.Zero || height <= Length.Zero)
            return area.PutWrapped(0, 0, Math.Min(3, area.Height), "No drawing yet: width and height are missing.", Tone.Dim);
        if (area.Width < LeastColumns + 2 * Beside || area.Height < LeastRows + 1)
            return 0;
        var (across, up) = (width.ShowRounded(units), height.ShowRounded(units));
        var apart = area.Width - LeastColumns - 2 * Beside >= TextWidth.Of(up);
        var right = Beside + (apart ? TextWidth.Of(up) : 0);
        var (columns, rows) = Scale(width, height, area.Width - Beside - right, area.Height - 1);
        var left = Math.Clamp((area.Width - columns) / 2, Beside, area.Width - columns - right);
        var opening = area.Part(left, 0, columns, rows);
        glyphs.Box(opening, Tone.Drawing);
        var parts = window.Units.Zip(Parts(window, width, columns)).Select(p => new UnitPart(p.First, p.Second.From, p.Second.Cells, columns)).ToList();
        foreach (var part in parts)
            part.DrawCovering(opening, part.Unit.Id == unit.Id, glyphs);
        foreach (var part in parts)
            part.DrawCable(area, left, rows, columns / (decimal)width.Nanometres, CellAspect, glyphs);
        foreach (var part in parts)
            part.DrawTag(opening, part.Unit.Id == unit.Id);

        var caption = TextWidth.Fit(apart ? across : $"{across} x {up}", area.Width);
        area.Put(Math.Clamp(left + (columns - TextWidth.Of(caption)) / 2, 0, area.Width - TextWidth.Of(caption)), rows, caption, Tone.Dim);
        if (apart)
            area.Put(left + columns + Beside, rows / 2, up, Tone.Dim);
        return rows + 1;
    }

    private static (int Columns, int Rows) Scale(Length width, Length height, int columns, int rows)
    {
        var perColumn = Math.Max(width.Nanometres / (decimal)Math.Max(LeastColumns, columns), height.Nanometres / (Math.Max(LeastRows, rows) * CellAspect));
        var c = (int)Math.Round(width.Nanometres / perColumn);
        var r = (int)Math.Round(height.Nanometres / perColumn / CellAspect);
        return (Math.Clamp(c, LeastColumns, Math.Max(LeastColumns, columns)), Math.Clamp(r, LeastRows, Math.Max(LeastRows, rows)));
    }

    private static List<(int From, int Cells)> Parts(Window window, Length width, int columns)
    {
        var parts = new List<(int, int)>();
        var from = 1;
        var inner = columns - 2;
        for (var at = 0; at < window.Units.Length; at++)
        {
            var cells = at == window.Units.Length - 1 ? columns - 1 - from
                : (int)Math.Round((window.Units[at].PartWidth ?? width / window.Units.Length) / width * inner);
            cells = Math.Clamp(cells, 1, Math.Max(1, columns - 1 - from));
            parts.Add((from, cells));
            from = Math.Min(columns - 2, from + cells);
        }
        return parts;
    }
}
