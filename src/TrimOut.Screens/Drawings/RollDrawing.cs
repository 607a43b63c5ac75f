using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>A cut through the head of a unit: the full roll to scale inside its head cover, room face on the left.</summary>
internal static class RollDrawing
{
    private const int CellsHigh = 8;

    /// <summary>Beside the words for the room's side.</summary>
    private const int Left = 6;

    /// <summary>A full roll is twice as many columns as lines, inside its frame.</summary>
    private const int LeastWidth = Left + 2 * CellsHigh + 2;

    /// <summary>Draws it; returns the lines that it took, none when the unit does not roll or a figure is missing.</summary>
    public static int Draw(Area area, Unit unit, Glyphs glyphs)
    {
        if (unit.Kind is not { RaisedForm: RaisedForm.Roll } kind || (unit.Item.Get(UnitFacts.OrderHeight) ?? unit.Window.KnownHeight) is not { } drop
            || kind[CoveringKindFacts.Tube] is not { } tube || kind[CoveringKindFacts.FabricThickness] is null
            || area.Height < CellsHigh + 3 || area.Width < LeastWidth)
            return 0;
        var units = unit.House.DisplayUnits;
        var roll = RoomToTurn(unit, drop);
        var room = unit.HeadCover?.RoomInside;
        var tallest = Length.Max(roll, room ?? roll);
        var cellsPerHeight = CellsHigh / (decimal)tallest.Nanometres;
        if (room is { } inside)
        {
            var (w, h) = (Cells(inside, cellsPerHeight) * 2, Cells(inside, cellsPerHeight));
            glyphs.Box(area.Part(Left - 1, 0, w + 2, h + 2), Tone.Drawing, unit.HeadCover!.Name);
        }
        Disc(area, Left, 1, roll, cellsPerHeight, glyphs.Fabric, Tone.Drawing);
        var inset = (int)Math.Round((roll - tube).Nanometres / 2m * cellsPerHeight);
        Disc(area, Left + 2 * inset, 1 + inset, tube, cellsPerHeight, glyphs.Solid, Tone.Strong);
        area.Put(0, 1, "room", Tone.Dim);
        area.Put(0, 2, "face", Tone.Dim);
        var takes = UncheckedValues.Marked(unit, u => RoomToTurn(u, drop).ShowRounded(units));
        var words = room is null ? $"The roll takes {takes}; no head cover's room to hold it against."
            : $"It {(roll <= room.Value ? "turns" : "does NOT turn")}: the roll takes {takes}, inside is "
                + $"{UncheckedValues.Marked(unit, u => u.HeadCover!.RoomInside!.Value.Show(units))}.";
        return area.PutWrapped(0, CellsHigh + 2, Math.Min(3, area.Height - CellsHigh - 2), words,
            room is not null && roll > room.Value ? Tone.Stop : Tone.Text);
    }

    private static Length RoomToTurn(Unit unit, Length drop) => Roll.RoomToTurn(unit.Kind![CoveringKindFacts.Tube]!.Value,
        unit.Kind[CoveringKindFacts.FabricThickness]!.Value, drop + (unit.Kind[CoveringKindFacts.ExtraFabric] ?? Length.Zero));

    private static void Disc(Area area, int x, int y, Length across, decimal cellsPerHeight, string sign, Tone tone)
    {
        var high = Math.Max(1, Cells(across, cellsPerHeight));
        for (var row = 0; row < high; row++)
        {
            var from = (row + 0.5) / high * 2 - 1;
            var half = (int)Math.Round(Math.Sqrt(Math.Max(0, 1 - from * from)) * high);
            for (var column = high - half; column < high + half; column++)
                area.Put(x + column, y + row, sign, tone);
        }
    }

    private static int Cells(Length length, decimal perHeight) => (int)Math.Round(length.Nanometres * perHeight);
}
