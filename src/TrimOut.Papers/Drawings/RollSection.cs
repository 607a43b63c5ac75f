using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>
/// A cut through the head of a window: tube, full roll and head cover, inside the reveal or on the wall above it. The room is on the left, the glass on the
/// right.
/// </summary>
internal static class RollSection
{
    private const double Left = 54;
    private const double LeftOutside = 112;
    private const double Top = 24;
    private const double Room = 150;
    private const double MostAbove = 110;

    /// <summary>Whether enough is known to draw it: the kind rolls up, tube, fabric and height are there, and whether it hangs inside or outside.</summary>
    public static bool CanDraw(Unit unit) => unit.Window.Mount is not null && Diameters(unit) is not null;

    /// <summary>The units of a window that can be drawn, those together whose section is the same.</summary>
    public static IEnumerable<IReadOnlyList<Unit>> Alike(Window window) => window.Units.Where(CanDraw)
        .GroupBy(u => (Diameters(u), Setback(u), u.HeadCover?.Item.Id)).Select(g => g.ToList());

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(IReadOnlyList<Unit> alike) => Describe(alike[0], Tags(alike));

    private static string Tags(IEnumerable<Unit> alike) => string.Join(", ", alike.Select(u => u.Tag));

    // Each figure has its own mark: what was measured holds, whatever the sheet says of the rest.
    private static Inline Describe(Unit unit, string tags) => !CanDraw(unit) ? Ours($"Section of {tags}")
        : unit.Window.Mount == Mount.Outside
            ? Ours($"Section of {tags}, room on the left, on the wall outside the opening: tube {unit.BySheet(Tube)}, full roll {unit.BySheet(FullRoll)}, " +
                $"room inside {unit.HeadCover?.OnPaper() ?? Dash} {unit.BySheet(RoomInside)}, head above the opening {Shown(Above(unit), unit)}")
            : Ours($"Section of {tags}, room on the left, glass on the right: tube {unit.BySheet(Tube)}, full roll {unit.BySheet(FullRoll)}, " +
                $"set back {unit.BySheet(SetBack)}, room inside {unit.HeadCover?.OnPaper() ?? Dash} {unit.BySheet(RoomInside)}, " +
                $"depth of the opening {Shown(unit.Window.Depth, unit)}");

    /// <summary>The drawing.</summary>
    public static Svg Of(IReadOnlyList<Unit> alike, Words words) =>
        alike[0].Window.Mount == Mount.Outside ? Outside(alike, words) : Inside(alike, words);

    private static Svg Inside(IReadOnlyList<Unit> alike, Words words)
    {
        var unit = alike[0];
        var (_, full) = Diameters(unit)!.Value;
        var setback = Setback(unit) ?? Length.Zero;
        var cover = unit.HeadCover?.Depth;
        var deepest = Length.Max(unit.Window.Depth ?? Length.Zero, setback + Length.Max(full, cover ?? Length.Zero));
        var scale = Math.Min(Room / deepest.InMillimetres(), 70 / Length.Max(full, cover ?? full).InMillimetres());
        double At(Length length) => length.InMillimetres() * scale;
        var high = At(Length.Max(cover ?? full, full));
        var svg = new Svg(300, Top + high + 88);

        svg.Text(Left + 8, 14, Tags(alike), size: 12, room: svg.Width - Left - 12, bold: true);
        // Head of the opening, with the wall above it; the room face is where the reveal begins.
        svg.Line(Left, Top, Left + At(deepest) + 20, Top, Pen.Thick).Line(Left, Top, Left, Top - 18, Pen.Thick);
        svg.Text(Left - 6, Top + 14, words.Of("room"), Anchored.End).Text(Left + At(deepest) + 26, Top + 14, words.Of("glass"));
        if (cover is { } depth)
            svg.Path([(Left + At(setback) + At(depth), Top + 2), (Left + At(setback), Top + 2), (Left + At(setback), Top + high)], Pen.Thick);
        var below = Top + high + 50;
        var (x, y) = (Left + At(setback) + high / 2, Top + high / 2);
        FullAndTube(svg, unit, x, y, scale, below, words);
        svg.Text(x + At(full) / 2 + 10, y + 4, unit.BySheet(u => Ours($"tube {Tube(u)}")).Plain(words));
        if (setback > Length.Zero)
            svg.Across(Left, Left + At(setback), below, "").Text(Left - 6, below + 4, unit.BySheet(SetBack).Plain(words), Anchored.End);
        if (unit.Window.Depth is { } reveal)
            svg.Across(Left, Left + At(reveal), below + 28, Shown(reveal, unit).Plain(words));
        return Legend(svg, words, setback > Length.Zero ? "Below: setback, full roll." : "Below: full roll.",
            unit.Window.Depth is null ? null : "Below them: depth of the opening.");
    }

    private static Svg Outside(IReadOnlyList<Unit> alike, Words words)
    {
        var unit = alike[0];
        var (_, full) = Diameters(unit)!.Value;
        var cover = unit.HeadCover?.Depth;
        var above = Above(unit);
        var scale = Math.Min(70 / Length.Max(full, cover ?? full).InMillimetres(), MostAbove / (above ?? full).InMillimetres());
        double At(Length length) => length.InMillimetres() * scale;
        var high = At(Length.Max(cover ?? full, full));
        var (wall, head) = (LeftOutside + high, Top + At(above ?? full));
        var svg = new Svg(300, Math.Max(Top + high, head) + 60);

        svg.Text(2, 14, Tags(alike), size: 12, room: wall - 8, bold: true);
        // The wall down to the head of the opening, which goes back from there.
        svg.Line(wall, Top - 18, wall, head, Pen.Thick).Line(wall, head, wall + 40, head, Pen.Thick);
        svg.Text(LeftOutside - 6, Top + 14, words.Of("room"), Anchored.End).Text(wall + 8, head + 16, words.Of("glass"));
        if (cover is { } depth)
            svg.Path([(wall, Top + 2), (wall - At(depth), Top + 2), (wall - At(depth), Top + high)], Pen.Thick);
        var below = Math.Max(Top + high, head) + 44;
        var (x, y) = (wall - high / 2, Top + high / 2);
        FullAndTube(svg, unit, x, y, scale, below, words);
        svg.Text(LeftOutside - 6, y + 4, unit.BySheet(u => Ours($"tube {Tube(u)}")).Plain(words), Anchored.End);
        if (above is { } begins)
            svg.Down(wall + 54, Top, head, Shown(begins, unit).Plain(words));
        return Legend(svg, words, "Below: full roll.", above is null ? null : "Right: head above the opening.");
    }

    /// <summary>The full roll around its tube, with what hangs down from it, and how thick it is.</summary>
    private static void FullAndTube(Svg svg, Unit unit, double x, double y, double scale, double below, Words words)
    {
        var (tube, full) = Diameters(unit)!.Value;
        var radius = full.InMillimetres() * scale / 2;
        svg.Circle(x, y, radius, part: "full-roll").Circle(x, y, tube.InMillimetres() * scale / 2, fill: Fill.Light);
        svg.Line(x + radius, y, x + radius, below - 16, Pen.Thin);
        svg.Across(x - radius, x + radius, below, unit.BySheet(FullRoll).Plain(words));
    }

    private static Svg Legend(Svg svg, Words words, params IEnumerable<string?> below) => svg.Legend(2, svg.Height + Svg.LegendLine - 4,
        below.OfType<string>().Prepend("Thick line: wall, head and head cover.").Prepend("Outer circle: full roll. Gray circle: tube.").Select(words.Of));

    private static Length? Above(Unit unit) => unit.Window.Item.Get(WindowFacts.HeadAbove);

    private static Inline RoomInside(Unit unit) => Shown(unit.HeadCover?.RoomInside, unit);

    private static Inline Tube(Unit unit) => Rounded(unit.Kind![CoveringKindFacts.Tube]!.Value, unit);

    /// <summary>Rounded up: what needs a hair more than a mark of the tape has no room within the mark.</summary>
    private static Inline FullRoll(Unit unit) =>
        Inline.Figure(Diameters(unit)!.Value.Full.RoundUp(TapeMark.Of(unit.House.DisplayUnits)).Show(unit.House.DisplayUnits));

    private static Inline SetBack(Unit unit) => Shown(Setback(unit), unit);

    private static Length? Setback(Unit unit) => unit.Setback ?? unit.Kind?[CoveringKindFacts.Setback];

    private static (Length Tube, Length Full)? Diameters(Unit unit) =>
        unit.Kind is { RaisedForm: RaisedForm.Roll } kind && kind[CoveringKindFacts.Tube] is { } tube
            && kind[CoveringKindFacts.FabricThickness] is { } fabric &&
        (unit.Item.Get(UnitFacts.OrderHeight) ?? unit.Window.KnownHeight) is { } drop
            ? (tube, Roll.Diameter(tube, fabric, drop + (kind[CoveringKindFacts.ExtraFabric] ?? Length.Zero)))
            : null;

    private static Inline Rounded(Length length, Unit unit) => Inline.Figure(length.ShowRounded(unit.House.DisplayUnits));

    private static Inline Shown(Length? length, Unit unit) => (length?.ShowRounded(unit.House.DisplayUnits)).FigureOrDash();
}
