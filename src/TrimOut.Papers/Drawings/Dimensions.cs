namespace TrimOut.Papers.Drawings;

/// <summary>Dimension lines with a slanted tick at each end, as on building drawings.</summary>
internal static class Dimensions
{
    private const double Tick = 3;

    /// <summary>How much wider than letters of middling width the "mm" of a figure is, and what parts it from the next figure.</summary>
    private const double Clear = 5;

    /// <summary>The room that a figure takes, so that it touches neither the next one nor the edge.</summary>
    public static double RoomFor(string figure) => Svg.WidthOf(figure) + Clear;

    /// <summary>A dimension from left to right, its figure above the line, or under it.</summary>
    public static Svg Across(this Svg svg, double from, double to, double y, string figure, bool underLine = false) => svg
        .Line(from, y, to, y, Pen.Hair)
        .Slant(from, y).Slant(to, y)
        .Text((from + to) / 2, underLine ? y + 13 : y - 4, figure, Anchored.Middle);

    /// <summary>A dimension from top to bottom, its figure to the right of the line.</summary>
    public static Svg Down(this Svg svg, double x, double from, double to, string figure) => svg
        .Line(x, from, x, to, Pen.Hair)
        .Slant(x, from).Slant(x, to)
        .Text(x + 6, (from + to) / 2 + 4, figure);

    private static Svg Slant(this Svg svg, double x, double y) => svg.Line(x - Tick, y + Tick, x + Tick, y - Tick);
}
