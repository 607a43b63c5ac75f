using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>A window as seen from inside the room, to scale in character cells: units, lead side, entry, tail.</summary>
internal static class WindowDrawing
{
    /// <summary>A character cell is about twice as high as it is wide.</summary>
    private const decimal CellAspect = 2;

    private const int Margin = 4;

    /// <summary>Draws the window that a unit hangs in; returns the number of lines it took.</summary>
    public static int Draw(Area area, Unit unit, Glyphs glyphs)
    {
        var window = unit.Window;
        var units = unit.House.DisplayUnits;
        if (window.KnownWidth is not { } width || window.KnownHeight is not { } height || width <= Length.Zero || height <= Length.Zero)
        {
            area.PutWrapped(0, 0, 2, "No drawing yet: width and height are missing.", Tone.Dim);
            return 2;
        }
        if (area.Width < 16 || area.Height < 6)
            return 0;
        var (columns, rows) = Scale(width, height, area.Width - 2 * Margin, area.Height - 2);
        var left = (area.Width - columns) / 2;
        var opening = area.Part(left, 0, columns, rows);
        glyphs.Box(opening, Tone.Drawing);
        var cellsPerLength = columns / (decimal)width.Nanometres;
        var parts = Parts(window, width, columns);
        foreach (var (part, (from, cells)) in window.Units.Zip(parts))
            DrawUnit(opening, part, from, cells, part.Id == unit.Id, glyphs);
        foreach (var (part, (from, cells)) in window.Units.Zip(parts))
            DrawLead(area, opening, left, part, from, cells, cellsPerLength, glyphs);

        var across = width.ShowRounded(units);
        area.Put(Math.Max(0, (area.Width - TextWidth.Of(across)) / 2), rows, across, Tone.Dim);
        var up = height.ShowRounded(units);
        area.Put(Math.Min(area.Width - TextWidth.Of(up), left + columns + 1), Math.Max(1, rows / 2), up, Tone.Dim);
        return rows + 1;
    }

    private static (int Columns, int Rows) Scale(Length width, Length height, int columns, int rows)
    {
        var perColumn = Math.Max(width.Nanometres / (decimal)Math.Max(8, columns), height.Nanometres * CellAspect / (Math.Max(4, rows) * CellAspect * CellAspect));
        var c = (int)Math.Round(width.Nanometres / perColumn);
        var r = (int)Math.Round(height.Nanometres / perColumn / CellAspect);
        return (Math.Clamp(c, 8, Math.Max(8, columns)), Math.Clamp(r, 4, Math.Max(4, rows)));
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
            cells = Math.Clamp(cells, 2, Math.Max(2, columns - 1 - from));
            parts.Add((from, cells));
            from = Math.Min(columns - 2, from + cells);
        }
        return parts;
    }

    private static void DrawUnit(Area opening, Unit unit, int from, int cells, bool current, Glyphs glyphs)
    {
        var tone = current ? Tone.Strong : Tone.Drawing;
        var drop = Math.Max(1, (opening.Height - 2) / 2);
        for (var x = from; x < from + cells; x++)
        {
            opening.Put(x, 1, glyphs.Solid, tone);
            for (var y = 2; y < 1 + drop; y++)
                opening.Put(x, y, glyphs.Fabric, Tone.Drawing);
            if (drop + 1 < opening.Height - 1)
                opening.Put(x, 1 + drop, glyphs.Across, tone);
        }
        opening.Put(from, 1, glyphs.Bracket, tone);
        if (unit.Window.Units.Length > 1 && from > 1)
        {
            for (var y = 1; y < opening.Height - 1; y++)
                opening.Put(from, y, glyphs.Down, Tone.Drawing);
        }
        var tag = unit.Tag;
        if (opening.Height > 6 && TextWidth.Of(tag) < cells)
            opening.Put(from + (cells - TextWidth.Of(tag)) / 2, Math.Min(opening.Height - 2, drop + 3), tag, tone);
    }

    private static void DrawLead(Area area, Area opening, int left, Unit unit, int from, int cells, decimal cellsPerLength, Glyphs glyphs)
    {
        if (unit.LeadSide is { } lead)
        {
            var x = lead == Side.Left ? left + from : left + from + cells - 1;
            area.Put(x, 1, glyphs.Lead, Tone.Note);
        }
        if (unit.EntrySide is not { } side)
            return;
        var jamb = (int)Math.Round((unit.Item.Get(UnitFacts.EntryFromJamb) ?? Length.Zero).Nanometres * cellsPerLength);
        var below = (int)Math.Round((unit.Item.Get(UnitFacts.EntryBelowHead) ?? Length.Zero).Nanometres * cellsPerLength / CellAspect);
        var at = side == Side.Left ? left + from - 1 + jamb : left + from + cells - jamb;
        var y = Math.Clamp(below, 0, opening.Height - 2);
        area.Put(Math.Clamp(at, 0, area.Width - 1), y, glyphs.Entry, Tone.Caution);
        if (unit.Run?.TailAtWindow is { } tail)
        {
            var length = Math.Max(1, (int)Math.Round(tail.Nanometres * cellsPerLength / CellAspect));
            var hang = side == Side.Left ? left + from - 2 : left + from + cells + 1;
            for (var down = 0; down < length && y + 1 + down < opening.Height; down++)
                area.Put(Math.Clamp(hang, 0, area.Width - 1), y + 1 + down, glyphs.Cable, Tone.Caution);
        }
    }
}
