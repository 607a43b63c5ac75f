using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>The way of a home run from the panel to the window: across to scale, up and down by rows, each leg with its length.</summary>
internal static class RouteDrawing
{
    /// <summary>Draws it; returns the lines that it took.</summary>
    public static int Draw(Area area, HomeRun run, Glyphs glyphs)
    {
        if (run.Legs.IsEmpty || area.Height < 5 || area.Width < 24)
            return 0;
        var units = run.House.DisplayUnits;
        var across = run.Legs.Where(l => l.Direction is LegDirection.Across or null).Aggregate(Length.Zero, (sum, l) => sum + (l.Length ?? Length.Zero));
        var room = area.Width - TextWidth.Of(run.Unit.Tag) - 8;
        var levels = Levels(run);
        var (lowest, highest) = (levels.Min(), levels.Max());
        var rows = Math.Min(area.Height, 2 * (highest - lowest) + 2);
        var x = 6;
        area.Put(0, RowOf(0), "panel", Tone.Strong);
        for (var at = 0; at < run.Legs.Length; at++)
        {
            var leg = run.Legs[at];
            var words = leg.Length is { } length ? length.Show(units, LengthScale.Run) : "?";
            var (from, to) = (RowOf(levels[at]), RowOf(levels[at + 1]));
            if (from == to)
            {
                var cells = Math.Clamp(across > Length.Zero && leg.Length is { } l ? (int)Math.Round(l / across * (room - 2)) : 4, TextWidth.Of(words) + 2, Math.Max(TextWidth.Of(words) + 2, area.Width - x - 8));
                for (var column = 0; column < cells; column++)
                    area.Put(x + column, from, glyphs.Across, ToneOf(leg));
                area.Put(x + 1, from, words, ToneOf(leg));
                x += cells;
            }
            else
            {
                for (var row = Math.Min(from, to); row <= Math.Max(from, to); row++)
                    area.Put(x, row, glyphs.Down, ToneOf(leg));
                area.Put(x + 1, (from + to) / 2, words, ToneOf(leg));
                x += 1;
            }
        }
        area.Put(x + 1, RowOf(levels[^1]), run.Unit.Tag, Tone.Strong);
        return rows;

        int RowOf(int level) => Math.Clamp((highest - level) * 2 + 1, 0, area.Height - 1);
    }

    /// <summary>The height of each end of each leg, in steps: up and through a floor rise, down falls.</summary>
    private static List<int> Levels(HomeRun run)
    {
        var levels = new List<int> { 0 };
        foreach (var leg in run.Legs)
            levels.Add(levels[^1] + (leg.Direction is LegDirection.Up or LegDirection.ThroughFloor ? 1 : leg.Direction == LegDirection.Down ? -1 : 0));
        return levels;
    }

    private static Tone ToneOf(Leg leg) => leg.Place == CablePlace.AirHandlingSpace ? Tone.Caution : Tone.Drawing;
}
