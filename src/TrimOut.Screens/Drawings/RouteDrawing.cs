using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>The way of a home run from the panel to the window: across to scale, up and down by rows, each leg with its length.</summary>
internal static class RouteDrawing
{
    private const string Panel = "panel";

    /// <summary>Draws it; returns the lines that it took, none where there is no room for every figure.</summary>
    public static int Draw(Area area, HomeRun run, Glyphs glyphs)
    {
        if (run.Legs.IsEmpty)
            return 0;
        var levels = Levels(run);
        var (lowest, highest) = (levels.Min(), levels.Max());
        var rows = 2 * (highest - lowest) + 2;
        var from = TextWidth.Of(Panel) + 1;
        var end = levels[^1] == levels[^2] ? TextWidth.Of(run.Unit.Tag) : Math.Max(TextWidth.Of(run.Unit.Tag), TextWidth.Of(Words(run.Legs[^1])));
        if (rows > area.Height || Cells(run, area.Width - from - 1 - end) is not { } cells)
            return 0;
        var x = from;
        area.Put(0, RowOf(0), Panel, Tone.Strong);
        for (var at = 0; at < run.Legs.Length; at++)
        {
            var (leg, y, to) = (run.Legs[at], RowOf(levels[at]), RowOf(levels[at + 1]));
            var words = Words(leg);
            var tone = ToneOf(leg);
            for (var row = Math.Min(y, to); y != to && row <= Math.Max(y, to); row++)
                area.Put(x, row, glyphs.Down, tone);
            area.Put(x + 1, (y + to) / 2, words, tone);
            for (var column = y == to ? 0 : 1; column < cells[at]; column++)
            {
                if (y != to || column == 0 || column > TextWidth.Of(words))
                    area.Put(x + column, to, glyphs.Across, tone);
            }
            x += cells[at];
        }
        area.Put(x + 1, RowOf(levels[^1]), run.Unit.Tag, Tone.Strong);
        return rows;

        int RowOf(int level) => (highest - level) * 2 + 1;
    }

    /// <summary>Columns of each leg: those across share the room by their length, and none is narrower than its figure; null where that is too much.</summary>
    private static List<int>? Cells(HomeRun run, int room)
    {
        var levels = Levels(run);
        var legs = run.Legs;
        var least = legs.Select((leg, at) => levels[at] == levels[at + 1] || (at + 1 < legs.Length && levels[at + 1] != levels[at + 2])
            ? TextWidth.Of(Words(leg)) + 2
            : 1).ToList();
        for (var at = 0; at + 1 < legs.Length; at++)
        {
            if (levels[at] != levels[at + 1] && levels[at + 1] == levels[at + 2])
                least[at + 1] = Math.Max(least[at + 1], TextWidth.Of(Words(legs[at])) + 2);
        }
        var spare = room - least.Sum();
        if (spare < 0)
            return null;
        var across = legs.Where((leg, at) => levels[at] == levels[at + 1]).Aggregate(Length.Zero, (sum, leg) => sum + (leg.Length ?? Length.Zero));
        var scale = across > Length.Zero ? room / (decimal)across.Nanometres : 0;
        var cells = least.ToList();
        for (var at = 0; at < legs.Length; at++)
        {
            var wanted = levels[at] == levels[at + 1] ? (int)((legs[at].Length ?? Length.Zero).Nanometres * scale) : 0;
            var more = Math.Clamp(wanted - least[at], 0, spare);
            cells[at] += more;
            spare -= more;
        }
        return cells;
    }

    private static string Words(Leg leg) => leg.Length is { } length ? length.Show(leg.House.DisplayUnits, LengthScale.Run) : "?";

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
