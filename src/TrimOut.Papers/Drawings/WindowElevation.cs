using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>A window as seen from inside the room: opening, units and entries to scale, and on which side each lead is.</summary>
internal static class WindowElevation
{
    private const double Margin = 24;
    private const double Above = 18;
    private const double MostWide = 210;
    private const double MostHigh = 96;

    /// <summary>What the marks mean.</summary>
    public const string Marks = "Wedge: the lead. Dot: the entry.";

    /// <summary>The widest legend where two drawings stand side by side as large as they are; a longer one goes on in the next line.</summary>
    private const double HalfAColumn = 344;

    /// <summary>The widest legend where three stand side by side.</summary>
    private const double ThirdOfAColumn = 232;

    private const double ToHeight = 22;

    private const string RoughSizes = "Rough sizes, not measured yet.";

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(Window window) =>
        Ours($"Window {window.Tag} from inside the room, mount {window.Entry(WindowFacts.Mount)}: " +
            $"{Widths(window).Prepend(Size(window)).Concat(Legend(window)).Concat(IsRough(window) ? [Ours(RoughSizes)] : []).JoinOrDash("; ")}");

    /// <summary>The drawing.</summary>
    /// <param name="window">The window.</param>
    /// <param name="words">The wording.</param>
    public static Svg Of(Window window, Words words) => Of(window, words, HalfAColumn, Legend(window), Marks);

    /// <summary>
    /// The drawing for the book, where three stand side by side: sides and tails stand in its tables, and what the marks mean is said once for all.
    /// </summary>
    /// <param name="window">The window.</param>
    /// <param name="words">The wording.</param>
    public static Svg InBook(Window window, Words words) => Of(window, words, ThirdOfAColumn, LegendInBook(window), null);

    private static Svg Of(Window window, Words words, double room, IEnumerable<Inline> told, string? marks)
    {
        var layout = WindowLayout.Of(window);
        var scale = Math.Min(MostWide / (layout.To - layout.From), MostHigh / (layout.High - layout.Top));
        var (left, top) = (Margin - layout.From * scale, Above - layout.Top * scale);
        var (wide, high) = (layout.Wide * scale, layout.High * scale);
        var legend = Lines(layout, words, told, marks).SelectMany(l => Wrapped.Lines(l, room - 4)).ToList();
        var widths = !IsAsWide(window);
        var figures = layout.Units.Select(u => Figure(layout.ToScale ? u.Unit.OwnWidth : null, window.House, words)).ToList();
        // Figures that are wider than their unit stand above and below the line in turns.
        var crowded = widths && layout.Units.Zip(figures).Any(u => Dimensions.RoomFor(u.Second) > (u.First.To - u.First.From) * scale);
        var below = top + high + (!widths ? 26 : crowded ? 64 : 50);
        var (beside, height) = (left + Math.Max(layout.To, layout.Wide) * scale + ToHeight, Figure(window.KnownHeight, window.House, words));
        var widest = legend.Select(l => Math.Min(Svg.WidthOf(l), room - 4)).DefaultIfEmpty().Max();
        var svg = new Svg(Math.Max(beside + 6 + Dimensions.RoomFor(height), 4 + widest), below + 16);
        svg.Box(left, top, wide, high, Pen.Thick, part: "opening");
        foreach (var unit in layout.Units)
            Unit(svg, unit, left, top, high, scale);
        foreach (var entry in layout.Units.Select(u => u.Entry).OfType<(double Along, double Below)>())
            svg.Circle(left + entry.Along * scale, top + entry.Below * scale, 3.5, fill: Fill.Black, part: "entry");
        if (widths)
        {
            foreach (var (at, unit) in layout.Units.Index())
                svg.Across(left + unit.From * scale, left + unit.To * scale, top + high + 26, figures[at], underLine: crowded && at % 2 == 1);
        }
        svg.Across(left, left + wide, below, Figure(window.KnownWidth, window.House, words));
        svg.Down(beside, top, top + high, height);
        return svg.Legend(2, below + 10 + Svg.LegendLine, legend);
    }

    private static void Unit(Svg svg, UnitLayout layout, double left, double top, double high, double scale)
    {
        var unit = layout.Unit;
        var (x, y, part) = (left + layout.From * scale, top + layout.Top * scale, (layout.To - layout.From) * scale);
        var drop = high * 0.45;
        svg.Box(x, y, part, drop, Pen.Hair, Fill.Light, part: "unit").Box(x, y, part, Math.Min(9, drop), Pen.Thin, Fill.White);
        svg.Line(x, y + drop, x + part, y + drop, Pen.Thick);
        svg.Text(x + part / 2, y + drop / 2 + 12, unit.Tag, Anchored.Middle, 12, part - 4, bold: true);
        if (unit.LeadSide is { } lead)
            Lead(svg, lead == Side.Left ? x : x + part, y, Math.Min(14, part / 2) * (lead == Side.Left ? 1 : -1));
    }

    /// <summary>A wedge within the unit, which points to the end at which the cable reaches it: outside it would lie on the unit beside.</summary>
    private static void Lead(Svg svg, double x, double y, double inwards) =>
        svg.Path([(x + inwards, y - 1), (x, y + 4.5), (x + inwards, y + 10), (x + inwards, y - 1)]);

    /// <summary>Whether a size that is drawn is one of before drywall and trim, by which nothing is ordered and nothing drilled.</summary>
    private static bool IsRough(Window window) => window is { KnownWidth: not null, KnownHeight: not null }
        && (window.SmallestWidth is null || window.LargestHeight is null);

    /// <summary>The legend with what the marks mean, which goes on in the last line of it.</summary>
    private static List<string> Lines(WindowLayout layout, Words words, IEnumerable<Inline> told, string? marks)
    {
        var lines = told.Select(l => l.Plain(words)).ToList();
        if (marks is not null && layout.Units.Any(u => u.Unit.LeadSide is not null || u.Entry is not null))
            lines[^1] = $"{lines[^1]}. {words.Of(marks)}";
        if (!layout.ToScale)
            lines.Add(words.Of("Not measured yet: not to scale."));
        else if (IsRough(layout.Units[0].Unit.Window))
            lines.Add(words.Of(RoughSizes));
        return lines;
    }

    /// <summary>What the drawing shows and can't say in lines.</summary>
    private static IEnumerable<Inline> Legend(Window window) => Outside(window).Concat(WhichWidths(window)).Concat(window.Units.SelectMany(u => new[]
    {
        Ours($"{u.Tag}: lead {u.Entry(UnitFacts.LeadSide)}, tail {Show(u.Run?.TailAtWindow, u.House)}"), Entry(u),
    }));

    /// <summary>An ordered width is another one than the part that was measured for it, and on a paper both may stand.</summary>
    private static IEnumerable<Inline> WhichWidths(Window window)
    {
        if (!IsAsWide(window) && window.Units.Where(u => u.Item.Get(UnitFacts.OrderWidth) is not null).Select(u => u.Tag).ToList() is { Count: > 0 } ordered)
            yield return Ours($"width as ordered: {ordered.JoinOrDash()}");
    }

    private static IEnumerable<Inline> LegendInBook(Window window) =>
        Outside(window).Concat(window.Units.Select(u => Join(": ", [u.Tag, Entry(u)])));

    private static IEnumerable<Inline> Outside(Window window) => window.Mount != Mount.Outside ? []
        : [Ours($"outside: {Show(window.Item.Get(WindowFacts.OverlapEachSide), window.House)} past the opening on each side, " +
            $"{Show(window.Item.Get(WindowFacts.HeadAbove), window.House)} above it")];

    /// <summary>Where the cable of a unit leaves the wall; of one without a cable, what feeds it.</summary>
    private static Inline Entry(Unit unit) => unit.OnPanel
        ? Ours($"entry {Show(unit.EntryAlong, unit.House)} from the left of the opening, {Show(unit.EntryBelowHead, unit.House)} down, " +
            $"{Show(unit.EntryBack, unit.House)} back")
        : Ours($"power: {unit.Entry(UnitFacts.Power)}");

    private static Inline Show(Length? length, House house) => (length?.ShowRounded(house.DisplayUnits)).FigureOrDash();

    /// <summary>How wide each unit is, where it is not as wide as its opening.</summary>
    private static IEnumerable<Inline> Widths(Window window) => IsAsWide(window) ? []
        : window.Units.Where(u => u.OwnWidth is not null).Select(u => Ours($"{u.Tag}: {Show(u.OwnWidth, u.House)} wide"));

    private static bool IsAsWide(Window window) => window.Mount != Mount.Outside && window.Units.Length == 1;

    private static Inline Size(Window window) => window is { KnownWidth: null, KnownHeight: null } ? Ours("not measured yet")
        : Ours($"{Show(window.KnownWidth, window.House)} wide, {Show(window.KnownHeight, window.House)} high");

    private static string Figure(Length? length, House house, Words words) => Show(length, house).Plain(words);
}
