using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>
/// A cut through the head of a window: tube, full roll and head cover against the depth of the reveal. The room is on the left, the glass on the right.
/// </summary>
internal static class RollSection
{
    private const double Left = 54;
    private const double Top = 24;
    private const double Room = 150;

    /// <summary>Whether enough is known to draw it: the kind rolls up, and tube, fabric and height are there.</summary>
    public static bool CanDraw(Unit unit) => Diameters(unit) is not null;

    /// <summary>The units of a window that can be drawn, those together whose section is the same.</summary>
    public static IEnumerable<IReadOnlyList<Unit>> Alike(Window window) => window.Units.Where(CanDraw)
        .GroupBy(u => (Diameters(u), Setback(u), u.HeadCover?.Item.Id)).Select(g => g.ToList());

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(IReadOnlyList<Unit> alike) => Describe(alike[0], Tags(alike));

    private static string Tags(IEnumerable<Unit> alike) => string.Join(", ", alike.Select(u => u.Tag));

    // Each figure has its own mark: the depth was measured, whatever the sheet says of the rest.
    private static Inline Describe(Unit unit, string tags) => CanDraw(unit)
        ? Ours($"Section of {tags}, room on the left, glass on the right: tube {unit.BySheet(Tube)}, full roll {unit.BySheet(FullRoll)}, " +
            $"set back {unit.BySheet(SetBack)}, " +
            $"room inside {unit.HeadCover?.OnPaper() ?? Dash} {unit.BySheet(u => Shown(u.HeadCover?.RoomInside, u))}, " +
            $"depth of the opening {Shown(unit.Window.Depth, unit)}")
        : Ours($"Section of {tags}");

    /// <summary>The drawing.</summary>
    public static Svg Of(IReadOnlyList<Unit> alike, Words words)
    {
        var unit = alike[0];
        var (tube, full) = Diameters(unit)!.Value;
        var setback = Setback(unit) ?? Length.Zero;
        var cover = unit.HeadCover?.Depth;
        var deepest = Length.Max(unit.Window.Depth ?? Length.Zero, setback + Length.Max(full, cover ?? Length.Zero));
        var scale = Math.Min(Room / deepest.InMillimetres(), 70 / Length.Max(full, cover ?? full).InMillimetres());
        double At(Length length) => length.InMillimetres() * scale;
        var radius = At(full) / 2;
        var high = Math.Max(At(cover ?? full), At(full));
        var svg = new Svg(300, Top + high + 88);

        svg.Text(Left + 8, 14, Tags(alike), size: 12, room: svg.Width - Left - 12, bold: true);
        // Head of the opening, with the wall above it; the room face is where the reveal begins.
        svg.Line(Left, Top, Left + At(deepest) + 20, Top, Pen.Thick).Line(Left, Top, Left, Top - 18, Pen.Thick);
        svg.Text(Left - 6, Top + 14, words.Of("room"), Anchored.End).Text(Left + At(deepest) + 26, Top + 14, words.Of("glass"));
        if (cover is { } depth)
            svg.Path([(Left + At(setback) + At(depth), Top + 2), (Left + At(setback), Top + 2), (Left + At(setback), Top + high)], Pen.Thick);
        var (x, y) = (Left + At(setback) + Math.Max(At(cover ?? full), At(full)) / 2, Top + high / 2);
        svg.Circle(x, y, radius).Circle(x, y, At(tube) / 2, fill: Fill.Light);
        svg.Line(x + radius, y, x + radius, Top + high + 34, Pen.Thin);

        var below = Top + high + 50;
        if (setback > Length.Zero)
            svg.Across(Left, Left + At(setback), below, "").Text(Left - 6, below + 4, unit.BySheet(SetBack).Plain(words), Anchored.End);
        svg.Across(x - radius, x + radius, below, unit.BySheet(FullRoll).Plain(words));
        if (unit.Window.Depth is { } reveal)
            svg.Across(Left, Left + At(reveal), below + 28, Shown(reveal, unit).Plain(words));
        svg.Text(x + radius + 10, y + 4, unit.BySheet(u => Ours($"tube {Tube(u)}")).Plain(words));
        return svg.Legend(2, svg.Height + Svg.LegendLine - 4, words.Of("Outer circle: full roll. Gray circle: tube."),
            words.Of("Thick line: wall, head and head cover."), words.Of("Below: setback, full roll; depth of the opening."));
    }

    private static Inline Tube(Unit unit) => Rounded(unit.Kind![CoveringKindFacts.Tube]!.Value, unit);

    private static Inline FullRoll(Unit unit) => Rounded(Diameters(unit)!.Value.Full, unit);

    private static Inline SetBack(Unit unit) => Shown(Setback(unit), unit);

    private static Length? Setback(Unit unit) => unit.Setback ?? unit.Kind?[CoveringKindFacts.Setback];

    private static (Length Tube, Length Full)? Diameters(Unit unit) =>
        unit.Kind is { RaisedForm: RaisedForm.Roll } kind && kind[CoveringKindFacts.Tube] is { } tube
            && kind[CoveringKindFacts.FabricThickness] is { } fabric &&
        (unit.Item.Get(UnitFacts.OrderHeight) ?? unit.Window.KnownHeight) is { } drop
            ? (tube, Roll.Diameter(tube, fabric, drop + (kind[CoveringKindFacts.ExtraFabric] ?? Length.Zero)))
            : null;

    private static Inline Rounded(Length length, Unit unit) => Inline.Figure(length.ShowRounded(unit.House.DisplayUnits));

    private static Inline Shown(Length? length, Unit unit) => (length?.Show(unit.House.DisplayUnits)).FigureOrDash();
}
