using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>The rooms of one floor as boxes in walking order, not to scale, each window on the side that it faces; north is up.</summary>
internal static class FloorPlan
{
    private const double Width = 676;
    private const double Gap = 12;
    private const double PerWindow = 48;
    private const double NameSize = 12;

    private enum Edge
    {
        Top,
        Right,
        Bottom,
        Left,
    }

    private const int RoomsOnASheet = 24;

    /// <summary>A floor, or as many of its rooms as one page takes.</summary>
    /// <param name="Name">Its name; empty where none was noted.</param>
    /// <param name="Rooms">Its rooms, in walking order.</param>
    public sealed record Floor(string Name, IReadOnlyList<Room> Rooms);

    /// <summary>The floors of a house in walking order.</summary>
    public static IEnumerable<Floor> Floors(House house) =>
        from floor in house.Rooms.GroupBy(r => r.Floor ?? "")
        from rooms in floor.Chunk(RoomsOnASheet)
        select new Floor(floor.Key, rooms);

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(Floor floor) =>
        Ours($"Rooms of floor {floor.Name.OrDash()}: " +
            $"{floor.Rooms.Select(r => Ours($"{r.Name} ({r.Windows.Select(Facing).JoinOrDash()})")).JoinOrDash("; ")}");

    private static Inline Facing(Window window)
    {
        var tag = (Inline)(window.LeftOut ? $"({window.Tag})" : UnitsOf(window));
        return window.Shown(WindowFacts.Facing) is { } facing ? Join(" ", [tag, facing]) : tag;
    }

    /// <summary>The drawing.</summary>
    public static Svg Of(Floor floor, Words words)
    {
        var boxes = new List<(Room Room, double X, double Y, double Wide, double High, ILookup<Edge, Window> Windows)>();
        var (x, y, rowHigh) = (2.0, 24.0, 0.0);
        foreach (var room in floor.Rooms)
        {
            var windows = AlongTheWalls(room).ToLookup(EdgeOf);
            var wide = Math.Min(Width - 4, Math.Max(Math.Max(160, Svg.WidthOf(room.Name, NameSize, bold: true) + 2 * BesideName(windows) + 1),
                36 + PerWindow * Math.Max(windows[Edge.Top].Count(), windows[Edge.Bottom].Count())));
            var high = Math.Max(96, 56 + 18 * Math.Max(windows[Edge.Left].Count(), windows[Edge.Right].Count()));
            if (x > 2 && x + wide > Width)
                (x, y, rowHigh) = (2, y + rowHigh + Gap, 0);
            boxes.Add((room, x, y, wide, high, windows));
            (x, rowHigh) = (x + wide + Gap, Math.Max(rowHigh, high));
        }
        var svg = new Svg(Width, y + rowHigh + 8 + Svg.LegendLine);
        svg.Text(2, 14, floor.Name.Length > 0 ? floor.Name : words.Of("(no floor noted)"), size: 13, room: 500, bold: true);
        svg.Text(Width - 4, 14, words.Of("north is up; not to scale"), Anchored.End);
        foreach (var box in boxes)
            Draw(svg, box.Room, box.X, box.Y, box.Wide, box.High, box.Windows);
        return svg.Legend(2, svg.Height - 4, words.Of("Thick line: a window, on the wall that it faces. Dashed, its tag in brackets: left out."));
    }

    private static void Draw(Svg svg, Room room, double x, double y, double wide, double high, ILookup<Edge, Window> windows)
    {
        svg.Box(x, y, wide, high)
            .Text(x + wide / 2, y + high / 2 + 4, room.Name, Anchored.Middle, NameSize, wide - 2 * BesideName(windows), bold: true);
        foreach (var side in windows)
        {
            var count = side.Count();
            var number = 0;
            foreach (var window in side)
            {
                var share = (++number - 0.5) / count;
                var tag = window.LeftOut ? $"({window.Tag})" : UnitsOf(window);
                if (side.Key is Edge.Top or Edge.Bottom)
                {
                    var (middle, line) = (x + wide * share, side.Key == Edge.Top ? y : y + high);
                    InWall(svg, window, middle - 13, line, middle + 13, line)
                        .Text(middle, side.Key == Edge.Top ? line + 15 : line - 7, tag, Anchored.Middle, room: PerWindow);
                }
                else
                {
                    var (middle, line) = (y + 20 + (high - 40) * share, side.Key == Edge.Left ? x : x + wide);
                    InWall(svg, window, line, middle - 8, line, middle + 8)
                        .Text(side.Key == Edge.Left ? line + 6 : line - 6, middle + 4, tag,
                        side.Key == Edge.Left ? Anchored.Start : Anchored.End, room: PerWindow);
                }
            }
        }
    }

    /// <summary>A window in the line of its wall; dashes would be lost on it, so the wall is open behind them.</summary>
    private static Svg InWall(Svg svg, Window window, double x1, double y1, double x2, double y2) => window.LeftOut
        ? svg.Box(x1 - 1, y1 - 1, x2 - x1 + 2, y2 - y1 + 2, Pen.None, Fill.White, part: "gap").Line(x1, y1, x2, y2, Pen.Dashed)
        : svg.Line(x1, y1, x2, y2, Pen.Thick);

    /// <summary>What tags take away from the name of a room on each side.</summary>
    private static double BesideName(ILookup<Edge, Window> windows) => windows[Edge.Left].Any() || windows[Edge.Right].Any() ? PerWindow + 10 : 6;

    /// <summary>The units of a window in short: W07 for one alone, W08A-B for two.</summary>
    private static string UnitsOf(Window window) => window.Units.Length > 1 ? $"{window.Units[0].Tag}–{window.Units[^1].Tag[^1]}" : window.Tag;

    /// <summary>
    /// The windows of a room in the order in which they lie along a wall of the plan, from the left or from the top: by what they face, and of those that
    /// face the same way the first on the left as seen from inside.
    /// </summary>
    private static IEnumerable<Window> AlongTheWalls(Room room) =>
        from window in room.Windows.Index()
        let edge = EdgeOf(window.Item)
        let back = edge is Edge.Bottom or Edge.Left
        let facing = ((int)(window.Item.Item.Get(WindowFacts.Facing)?.Degrees ?? 180) + 180) % 360
        let turn = edge is Edge.Top ? facing : (facing + 180) % 360
        orderby back ? -turn : turn, back ? -window.Index : window.Index
        select window.Item;

    /// <summary>The wall in which a window lies: that which it faces, a bay with the wall that its middle faces; at the bottom where none was noted.</summary>
    private static Edge EdgeOf(Window window) => window.Item.Get(WindowFacts.Facing)?.Degrees switch
    {
        null => Edge.Bottom,
        > 45 and < 135 => Edge.Right,
        >= 135 and <= 225 => Edge.Bottom,
        > 225 and < 315 => Edge.Left,
        _ => Edge.Top,
    };
}
