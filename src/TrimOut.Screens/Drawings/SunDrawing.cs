using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>The sun on a unit's glass through the year: a row for each month, or for every other one, and the hours of the clock across.</summary>
internal static class SunDrawing
{
    private const int Names = 4;
    private const int Months = 12;
    private const int Hours = 24;
    private const int HourMinutes = 60;

    /// <summary>The hours above the months, and the line below them.</summary>
    private const int Around = 2;

    private static readonly Sign Elsewhere = new(g => g.Nothing, "in a sun chart: the sun is up, and not on this glass");
    private static readonly Sign Direct = new(g => g.Light, "in a sun chart: the sun falls on the glass");
    private static readonly Sign Glare = new(g => g.Slat, "in a sun chart: it is low and glares");
    private static readonly Sign Heat = new(g => g.Fabric, "in a sun chart: it heats");
    private static readonly Sign Both = new(g => g.Solid, "in a sun chart: it glares and heats");

    /// <summary>The signs of it.</summary>
    public static readonly IReadOnlyList<Sign> Signs = [Elsewhere, Direct, Glare, Heat, Both];

    /// <summary>Draws it; returns the lines that it took, none where there is no room or the sun can't be reckoned with.</summary>
    public static int Draw(Area area, Unit unit, Glyphs glyphs)
    {
        var every = area.Height >= Around + Months ? 1 : area.Height >= Around + Months / 2 ? 2 : 0;
        if (every == 0 || area.Width < Names + Hours || Facade.Of(unit.Window) is not { } facade || HouseSun.Of(unit.House) is not { } sun)
            return 0;
        var year = sun.Of(facade);
        var cells = area.Width >= Names + 2 * Hours ? 2 : 1;
        var y = 0;
        if (area.Height > Around + Months / every)
            area.PutFit(0, y++, area.Width, $"Sun on {unit.Tag}, facing {unit.Window.Show(WindowFacts.Facing)}", Tone.Heading);
        foreach (var hour in (int[])[0, 6, 12, 18])
            area.Put(Names + hour * cells, y, $"{hour}", Tone.Dim);
        y++;
        foreach (var month in year.Months.Where(m => (m.Month - 1) % every == 0))
        {
            area.Put(0, y, PresetFacts.RunsFrom.Show((Month)(month.Month - 1), unit.House)[..(Names - 1)], Tone.Text);
            for (var cell = 0; cell < Hours * cells; cell++)
                Put(area, Names + cell, y, year.At(month.Month, (2 * cell + 1) * HourMinutes / cells / 2), glyphs);
            y++;
        }
        var x = area.Put(0, y, Direct.Drawn(glyphs), Tone.Drawing);
        x = area.Put(x, y, " sun ", Tone.Dim);
        x = area.Put(x, y, Glare.Drawn(glyphs), Tone.Drawing);
        x = area.Put(x, y, " glare ", Tone.Dim);
        x = area.Put(x, y, Heat.Drawn(glyphs), Tone.Drawing);
        x = area.Put(x, y, " heat ", Tone.Dim);
        x = area.Put(x, y, Both.Drawn(glyphs), Tone.Drawing);
        area.Put(x, y, " both", Tone.Dim);
        return y + 1;
    }

    private static void Put(Area area, int x, int y, SunOnGlass sun, Glyphs glyphs)
    {
        var (sign, tone) = sun switch
        {
            SunOnGlass.Elsewhere => (Elsewhere, Tone.Dim),
            SunOnGlass.Direct => (Direct, Tone.Drawing),
            SunOnGlass.Glare => (Glare, Tone.Drawing),
            SunOnGlass.Heat => (Heat, Tone.Drawing),
            SunOnGlass.GlareAndHeat => (Both, Tone.Drawing),
            _ => (null, Tone.Dim),
        };
        if (sign is not null)
            area.Put(x, y, sign.Drawn(glyphs), tone);
    }
}
