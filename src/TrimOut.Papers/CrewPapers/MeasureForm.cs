using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>
/// For the day of measuring, to be filled by pen: one window after the other, in the order in which its figures are typed in; the second measure on
/// another page, where the first can't be seen.
/// </summary>
internal static class MeasureForm
{
    public static Paper Paper
    { get; } = new("measure-form", "Measure form", "the crew", "Every finished opening in walking order, to be measured twice and written in by pen.",
        ShortCover.Write,
        new Section("before", "Before you start", Before), new Section("first", "First measure", First), new Section("second", "Second measure", Second))
    {
        Warns = OpenStops.Of(Phase.WalkThrough, Phase.Measure),
    };

    private static readonly Fact[] Widths = [WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom];
    private static readonly Fact[] Heights = [WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight];
    private static readonly Fact[] Depths = [WindowFacts.DiagonalDown, WindowFacts.DiagonalUp, WindowFacts.Depth];
    private static readonly Fact[] InTheWay = [WindowFacts.DepthTo, WindowFacts.InTheWay, WindowFacts.InTheWayDepth];
    private static readonly Fact[] Outside = [WindowFacts.OverlapEachSide, WindowFacts.HeadAbove, WindowFacts.WallAbove];

    /// <summary>What is written in of a window on the first round, in the order in which the walk asks for it.</summary>
    internal static IEnumerable<Fact> WrittenIn => [.. Widths, .. Heights, .. Depths];

    private static void Before(MarkdownWriter to, PaperData data) => to.List(
        Ours("Measure finished openings only: drywall, sill and paint done."),
        Ours("Stand inside the room and face the window: left and right are as you see them."),
        data.House.DisplayUnits == DisplayUnits.Inches
            ? Ours("Steel tape, in inches and sixteenths. Write what you read: nothing is taken off and nothing rounded.")
            : Ours("Steel tape, in whole millimeters. Write what you read: nothing is taken off and nothing rounded."),
        Ours("Depth: flat, from the room face to the glass, or to the first thing in the way; say which."),
        Ours("Ladder on firm ground; two people for a wide or high window."),
        Ours("The second measure is taken by somebody else or on another round, without a look at the first."));

    private static void First(MarkdownWriter to, PaperData data) => EachRoom(to, data.House, windows =>
    {
        foreach (var window in windows)
        {
            to.Draw(window.Tag, WindowElevation.Describe(window), words => WindowElevation.Of(window, words));
            to.Table([Ours($"Window {window.Tag}"), Ours("Top or left"), Ours("Middle"), Ours("Bottom or right")],
                [Row([Ours("Width: top, middle, bottom"), .. Widths.Select(window.EntryOrBlank)]),
                    Row([Ours("Height: left, middle, right"), .. Heights.Select(window.EntryOrBlank)])]);
            OneRow(to, window, [.. Depths, .. InTheWay]);
            if (window.Mount != Mount.Inside)
                OneRow(to, window, Outside);
            if (window.Units.Length > 1)
                to.Table(["Unit", UnitFacts.PartWidth.Label], window.Units.Select(u => Row(u.Tag, u.EntryOrBlank(UnitFacts.PartWidth))));
        }
    });

    private static void OneRow(MarkdownWriter to, Window window, Fact[] facts) =>
        to.Table(["Window", .. facts.Select(f => f.Label)], [Row([window.Tag, .. facts.Select(window.EntryOrBlank)])]);

    private static void Second(MarkdownWriter to, PaperData data) => EachRoom(to, data.House, windows =>
        to.Table(["Window", "Smallest width", "Largest height", "Measured by", "Day"], windows.Select(w => Row(
            w.Tag, w.EntryOrBlank(WindowFacts.WidthAgain), w.EntryOrBlank(WindowFacts.HeightAgain), Blank, Blank))));

    private static void EachRoom(MarkdownWriter to, House house, Action<IReadOnlyList<Window>> write)
    {
        var rooms = house.Rooms.Select(r => (Name: (Inline)r.FullName, Windows: r.Windows.ToList()))
            .Append((Name: Ours("(no room yet)"), Windows: [.. house.Windows.Where(w => w.Room is null)])).ToList();
        foreach (var (name, all) in rooms)
        {
            if (all.Where(w => !w.LeftOut).ToList() is not { Count: > 0 } windows)
                continue;
            to.Heading(3, $"{name}");
            write(windows);
        }
        if (!house.Windows.Any(w => !w.LeftOut))
            to.Say("No windows yet.");
    }
}
