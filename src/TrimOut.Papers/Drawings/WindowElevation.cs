using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>A window as seen from inside the room: opening and units to scale, lead side, entry and tail.</summary>
internal static class WindowElevation
{
    private const double Left = 36;
    private const double Top = 18;
    private const double MostWide = 300;
    private const double LeastWide = 200;
    private const double MostHigh = 100;
    private const double LegendLine = 12;

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(Window window) =>
        Ours($"Window {window.Tag} from inside the room: {Size(window)}; " +
            $"{window.Units.Select(u => Join(", ", [LeadWords(u), EntryWords(u)])).JoinOrDash("; ")}");

    /// <summary>The drawing.</summary>
    public static Svg Of(Window window, Words words)
    {
        var (wide, high, perUnit) = Scaled(window);
        var bottom = Top + high;
        var legend = bottom + 38;
        var svg = new Svg(Math.Max(Left + wide + 90, LeastWide), legend + LegendLine * (2 * window.Units.Length + (perUnit is null ? 1 : 0)) + 4);
        svg.Box(Left, Top, wide, high, Pen.Thick);
        var at = Left;
        foreach (var unit in window.Units)
        {
            var part = unit.PartWidth is { } known && perUnit is { } scale ? known.InMillimetres() * scale : wide / window.Units.Length;
            part = Math.Min(part, Left + wide - at);
            Unit(svg, unit, at, part, high, perUnit, words);
            at += part;
        }
        svg.Across(Left, Left + wide, bottom + 26, Figure(window.KnownWidth, window.House, words));
        svg.Down(Left + wide + 22, Top, bottom, Figure(window.KnownHeight, window.House, words));
        for (var line = 0; line < window.Units.Length; line++)
        {
            svg.Text(2, legend + LegendLine * (2 * line + 1), LeadWords(window.Units[line]).Plain(words), size: 9.5, room: svg.Width - 4);
            svg.Text(2, legend + LegendLine * (2 * line + 2), EntryWords(window.Units[line]).Plain(words), size: 9.5, room: svg.Width - 4);
        }
        if (perUnit is null)
            svg.Text(2, legend + LegendLine * (2 * window.Units.Length + 1), words.Of("Not measured yet: not to scale."), size: 9.5);
        return svg;
    }

    private static void Unit(Svg svg, Unit unit, double x, double part, double high, double? scale, Words words)
    {
        var drop = high * 0.45;
        svg.Box(x + 3, Top + 3, part - 6, drop, Pen.Hair, Fill.Light).Box(x + 3, Top + 3, part - 6, 9, Pen.Thin, Fill.White);
        svg.Line(x + 3, Top + 3 + drop, x + part - 3, Top + 3 + drop, Pen.Thick);
        svg.Text(x + part / 2, Top + drop / 2 + 12, unit.Tag, Anchored.Middle, 13, part - 8, bold: true);
        if (unit.LeadSide is { } lead)
            Lead(svg, lead == Side.Left ? x + 3 : x + part - 3, lead == Side.Left ? -1 : 1);
        if (unit.OnPanel && unit.EntrySide is { } entry)
            Entry(svg, unit, entry == Side.Left ? x : x + part, entry == Side.Left ? 1 : -1, high, scale);
    }

    /// <summary>A wedge that points to the end at which the cable reaches the unit.</summary>
    private static void Lead(Svg svg, double x, int outwards) =>
        svg.Path([(x + outwards * 14, Top + 2), (x, Top + 7.5), (x + outwards * 14, Top + 13), (x + outwards * 14, Top + 2)]);

    private static void Entry(Svg svg, Unit unit, double jamb, int inwards, double high, double? scale)
    {
        var across = Math.Min((unit.EntryFromJamb?.InMillimetres() ?? 0) * (scale ?? 0), 60);
        var down = Math.Min((unit.EntryBelowHead?.InMillimetres() ?? 0) * (scale ?? 0), high - 6);
        var (x, y) = (jamb + inwards * Math.Max(across, 6), Top + Math.Max(down, 6));
        if (unit.Run?.TailAtWindow is { } tail && scale is { } per)
            svg.Line(x, y, x, Math.Min(y + tail.InMillimetres() * per, Top + high + 12), Pen.Dashed);
        svg.Circle(x, y, 3.5, fill: Fill.Black);
    }

    private static Inline LeadWords(Unit unit) => Ours($"{unit.Tag}: lead {unit.Entry(UnitFacts.LeadSide)}, tail {Show(unit.Run?.TailAtWindow, unit.House)}");

    private static Inline EntryWords(Unit unit) => unit.OnPanel
        ? Ours($"entry {unit.Entry(UnitFacts.EntrySide)}, {Show(unit.EntryFromJamb, unit.House)} from the jamb")
        : Ours($"power: {unit.Entry(UnitFacts.Power)}");

    private static Inline Show(Length? length, House house) => (length?.Show(house.DisplayUnits)).FigureOrDash();

    private static Inline Size(Window window) => Ours($"{Show(window.KnownWidth, window.House)} wide, {Show(window.KnownHeight, window.House)} high");

    private static string Figure(Length? length, House house, Words words) => Show(length, house).Plain(words);

    private static (double Wide, double High, double? PerMillimetre) Scaled(Window window)
    {
        if (window is not { KnownWidth: { } width, KnownHeight: { } height } || width <= Length.Zero || height <= Length.Zero)
            return (150, MostHigh, null);
        var scale = Math.Min(MostWide / width.InMillimetres(), MostHigh / height.InMillimetres());
        return (Math.Max(width.InMillimetres() * scale, 24), Math.Max(height.InMillimetres() * scale, 24), scale);
    }
}
