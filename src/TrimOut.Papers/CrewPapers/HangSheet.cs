using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>For the hanging day: room by room, which unit goes where and how, with boxes to tick.</summary>
internal static class HangSheet
{
    public static Paper Paper { get; } = new("hang-sheet", "Hang sheet", "the crew", "Room by room: which unit hangs where and how, with boxes to tick.",
        ShortCover.Write,
        new Section("before", "Before you start", Before), new Section("rooms", "Room by room", Rooms))
    {
        Warns = OpenStops.Of(Phase.Measure, Phase.Receive, Phase.Hang),
    };

    private static void Before(MarkdownWriter to, PaperData data) => to.List(
        Ours("Panel off at its breaker while leads are brought out and spliced."),
        Ours("Ladder on firm ground; two people for a wide unit. Drill only where nothing runs: " +
            "the pull sheet and the pictures of the open wall say where the cable is."),
        Ours($"Eyes and dust: {new JobItself(data.House).EntryOrBlank(HouseFacts.DrillGuard)}."),
        Ours("No loose cord and no loop of cable within a child's reach when you leave the room."));

    private static void Rooms(MarkdownWriter to, PaperData data)
    {
        foreach (var room in data.House.Rooms.Where(r => r.Windows.Any(w => !w.LeftOut)))
            Room(to, room.FullName, [.. room.Windows.Where(w => !w.LeftOut)]);
        if (data.House.Windows.Where(w => w.Room is null && !w.LeftOut).ToList() is { Count: > 0 } lost)
            Room(to, Ours("(no room yet)"), lost);
    }

    private static void Room(MarkdownWriter to, Inline room, List<Window> windows)
    {
        var units = windows.SelectMany(w => w.Units).ToList();
        to.Heading(3, $"{room}");
        var drawings = windows.Select(w => to.Drawing(w.Tag, WindowElevation.Describe(w), words => WindowElevation.Of(w, words)))
            .Concat(units.Where(RollSection.CanDraw).Select(u =>
                to.Drawing(u.Tag, RollSection.Describe(u), words => RollSection.Of(u, words)))).ToList();
        to.Say(drawings.Aggregate((row, drawing) => row + drawing));
        to.Table(["Unit", "Reached from", "Box label", "Size", "Mount", "Lead side", "Setback by the sheet", "Center support"], units.Select(u => Row(
            u.Tag, u.Window.Entry(WindowFacts.Reach), u.EntryOrBlank(UnitFacts.BoxLabel),
            Join(" x ", [u.Entry(UnitFacts.OrderWidth), u.Entry(UnitFacts.OrderHeight)]),
            u.Window.Entry(WindowFacts.Mount), u.Entry(UnitFacts.LeadSide), OrBlank(u.Kind?[CoveringKindFacts.Setback], u),
            Ours(u.NeedsCentreSupport ? "yes" : "no"))));
        to.Table(
            ["From the left of the opening; minus: left of it", "Unit begins", "Left bracket", "Center support, middle", "Right bracket", "Unit ends",
                "Cable comes out"],
            units.Select(u => AlongOpening.Of(u) is var along ? Row(u.Tag, Shown(along.From, u), Shown(along.LeftBracket, u), Shown(along.Centre, u),
                Shown(along.RightBracket, u), Shown(along.To, u), u.OnPanel ? Shown(u.EntryAlong, u) : Dash) : []));
        to.Table(
            ["Unit", "Brackets level", "Lead in front", "Clicked in", "Moves freely", "Setback as built", "Free cord", "Cord held by", "Confirmed by", "Who"],
            units.Select(u => Row(u.Tag, Ticks.Of(u, "brackets-fixed"), u.OnPanel ? Ticks.Of(u, "lead-in-front") : Dash, Ticks.Of(u, "clicked-in"),
                Ticks.Of(u, "moves-free"), OrBlank(u.Item.Get(UnitFacts.Setback), u),
                u.EntryOrBlank(UnitFacts.FreeCord), u.EntryOrBlank(UnitFacts.CordHeldBy), u.EntryOrBlank(UnitFacts.CordConfirmedBy), Blank)));
    }

    private static Inline Shown(Length? length, Unit unit) => (length?.ShowRounded(unit.House.DisplayUnits)).FigureOrDash();

    private static Inline OrBlank(Length? length, Unit unit) => length is null ? Blank : Shown(length, unit);

    private static Inline Shown(Stretch? stretch, Unit unit) => stretch is { } some ? Ours($"{Shown(some.From, unit)} to {Shown(some.To, unit)}") : Dash;
}
