using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>For the framing walk: what is known of each opening, and blanks for the rest.</summary>
internal static class WalkSheet
{
    private const int SpareRows = 3;

    public static Paper Paper
    { get; } = new("walk-sheet", "Walk sheet", "the crew", "Every opening room by room for the framing walk, with blanks to write in.",
        ShortCover.Write,
        new Section("before", "Before you start", Before), new Section("rooms", "Room by room", Rooms))
    {
        Warns = OpenStops.Of(Phase.WalkThrough),
    };

    private static void Before(MarkdownWriter to, PaperData data) => to.List(
        Ours("Stand inside the room and face the window: left and right are as you see them."),
        Ours("Framing is open: mind openings in floors, nails and loose boards. Ladder on firm ground, a second person for high windows; " +
            "a scaffold only if it is signed off."),
        OldPaint.Said(data),
        Ours("Ask which windows are escape windows: the local authority says what may hang there."),
        Ours("Touch no wiring. What is not yours is another trade's, and may be live."));

    private static void Rooms(MarkdownWriter to, PaperData data)
    {
        foreach (var room in data.House.Rooms)
            Room(to, room.Name, room.Show(RoomFacts.Floor), [.. room.Windows]);
        Room(to, Ours("(no room yet)"), null, [.. data.House.Windows.Where(w => w.Room is null)]);
    }

    private static void Room(MarkdownWriter to, Inline room, string? floor, List<Window> windows)
    {
        to.Heading(3, floor is null ? room : Ours($"{room} ({floor})"));
        to.Table(["Window", "Facing", "Reached from", "Mount", "Rough width", "Rough height", "Escape window", "Left out because"],
            [.. windows.Select(Opening), .. Enumerable.Repeat(Blanks(8), SpareRows)]);
        to.Table(["Unit", "Kind", "Lead side", "Power", "Entry side", "From jamb", "Back", "Below head"],
            [.. windows.Where(w => !w.LeftOut).SelectMany(w => w.Units).Select(Covering), .. Enumerable.Repeat(Blanks(8), SpareRows)]);
    }

    private static Inline[] Opening(Window w) => Row(
        w.Tag, w.EntryOrBlank(WindowFacts.Facing), w.EntryOrBlank(WindowFacts.Reach), w.EntryOrBlank(WindowFacts.Mount),
        w.EntryOrBlank(WindowFacts.RoughWidth), w.EntryOrBlank(WindowFacts.RoughHeight), w.EntryOrBlank(WindowFacts.Escape),
        w.LeftOut ? w.EntryOrBlank(WindowFacts.NotCoveredBecause) : Dash);

    private static Inline[] Covering(Unit u) => Row(
        u.Tag, u.EntryOrBlank(UnitFacts.Kind), u.EntryOrBlank(UnitFacts.LeadSide), u.EntryOrBlank(UnitFacts.Power), Wired(u, UnitFacts.EntrySide),
        Wired(u, UnitFacts.EntryFromJamb), Wired(u, UnitFacts.EntryBack), Wired(u, UnitFacts.EntryBelowHead));

    private static Inline Wired(Unit unit, Fact fact) => unit.OnPanel ? unit.EntryOrBlank(fact) : Dash;

    private static Inline[] Blanks(int count) => [.. Enumerable.Repeat(Blank, count)];
}
