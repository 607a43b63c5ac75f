using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.TradePapers;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>For the hanging day: room by room, which unit goes where and how, with boxes to tick.</summary>
internal static class HangSheet
{
    private static readonly Phase[] Stopping = [Phase.WalkThrough, Phase.Measure, Phase.Order, Phase.Receive, Phase.Hang];

    public static Paper Paper { get; } = new("hang-sheet", "Hang sheet", "the crew", "Room by room: which unit hangs where and how, with boxes to tick.",
        ShortCover.Write,
        new Section("before", "Before you start", Before), new Section("rooms", "Room by room", Rooms))
    {
        Warns = OpenStops.Of(Stopping),
    };

    private static void Before(MarkdownWriter to, PaperData data) => to.List([
        Ours("Panel off at its breaker while leads are brought out and spliced."),
        Ours("Ladder on firm ground; two people for a wide unit.") + (HousePhotos.Of(data.House).Any(p => p.Fact == RunFacts.Photo)
            ? Ours("Drill only where nothing runs: the pull sheet and the pictures of the open wall, in the test record, say where the cable is.")
            : Ours("Drill only where nothing runs: the pull sheet says where the cable is; no picture of the open wall was noted.")),
        Ours($"Eyes and dust: {new JobItself(data.House).EntryOrBlank(HouseFacts.DrillGuard)}."),
        .. OldPaint.WhereItMayHoldLead(data),
        Ours("No loose cord and no loop of cable within a child's reach when you leave the room."),
    ]);

    private static void Rooms(MarkdownWriter to, PaperData data)
    {
        to.Say("All places are from the left of the opening; what has a minus before it lies left of it.");
        foreach (var room in data.House.Rooms.Where(r => r.Windows.Any(w => !w.LeftOut)))
            Room(to, data, room.FullName, [.. room.Windows.Where(w => !w.LeftOut)]);
        if (data.House.Windows.Where(w => w.Room is null && !w.LeftOut).ToList() is { Count: > 0 } lost)
            Room(to, data, Ours("(no room yet)"), lost);
    }

    private static void Room(MarkdownWriter to, PaperData data, Inline room, List<Window> windows)
    {
        var units = windows.SelectMany(w => w.Units).ToList();
        var stopped = OpenStops.UnitsStopped(data, units, Stopping);
        to.Heading(3, $"{room}");
        Drawings(to, windows);
        to.Table(["Unit", "Reached from", "Box label", "Ordered size", OrderFact.WidthIs.Label, "Mount", "Lead side", "Setback by the sheet",
            "Center support"], units.Select(u => Row(
            u.Tag, u.Window.Entry(WindowFacts.Reach), u.EntryOrBlank(UnitFacts.BoxLabel),
            OrderFact.SizeOrdered(u, data), OrderFact.WidthIs.Entry(u),
            u.Window.Entry(WindowFacts.Mount), u.Entry(UnitFacts.LeadSide), u.BySheet(Setback), u.BySheet(CentreSupport))));
        string[] along =
            ["Unit", "Unit begins, from the left of the opening", "Left bracket", "Center support, middle", "Right bracket", "Unit ends",
                "Cable comes out"];
        if (windows.Exists(w => w.Mount == Mount.Outside))
            to.Table([.. along, "Head above the opening"], units.Select(u => (Inline[])[.. Along(u, stopped), HeadAbove(u)]));
        else
            to.Table(along, units.Select(u => Along(u, stopped)));
        to.Table(
            ["Unit", "Brackets level", "Lead in front", "Clicked in", "Moves freely", "Setback as built", "Free cord", "Cord held by", "Confirmed by", "Who"],
            units.Select(u => Row(u.Tag, Ticks.Of(u, "brackets-fixed"), u.OnPanel ? Ticks.Of(u, "lead-in-front") : Dash, Ticks.Of(u, "clicked-in"),
                Ticks.Of(u, "moves-free"), SetbackAsBuilt(u),
                u.EntryOrBlank(UnitFacts.FreeCord), u.EntryOrBlank(UnitFacts.CordHeldBy), u.EntryOrBlank(UnitFacts.CordConfirmedBy), Blank)));
        foreach (var blank in units.Where(u => u.Window.SmallestWidth is not null).GroupBy(u => (Lacks: AlongOpening.Lacks(u), u.Kind?.Id)))
        {
            if (blank.Key.Lacks is { } fact)
                to.Say($"Blank until this is known: {Lacking(fact, blank.First())}. Units: {blank.Select(u => u.Tag).JoinOrDash()}.");
        }
    }

    /// <summary>Each window in a paragraph with the sections of its units, which no sheet parts; those without a section side by side.</summary>
    private static void Drawings(MarkdownWriter to, List<Window> windows)
    {
        var row = new List<Inline>();
        foreach (var window in windows)
        {
            var sections = RollSection.Alike(window).ToList();
            if (sections.Count > 0)
                EndRow(to, row);
            row.Add(to.Drawing(window.Tag, WindowElevation.Describe(window), words => WindowElevation.Of(window, words)));
            row.AddRange(sections.Select(s => to.Drawing(s[0].Tag, RollSection.Describe(s), words => RollSection.Of(s, words))));
            if (sections.Count > 0)
                EndRow(to, row);
        }
        EndRow(to, row);
    }

    private static void EndRow(MarkdownWriter to, List<Inline> row)
    {
        if (row.Count > 0)
            to.Say(Beside(row));
        row.Clear();
    }

    /// <summary>On a wall nothing is set back.</summary>
    private static Inline Setback(Unit unit) => unit.Window.Mount == Mount.Outside ? Dash
        : unit.Kind is { } kind && kind[CoveringKindFacts.Setback] is { } setback ? Shown(setback, unit) : Blank;

    private static Inline SetbackAsBuilt(Unit unit) => unit.Item.Get(UnitFacts.Setback) is null && unit.Window.Mount == Mount.Outside ? Dash
        : OrBlank(unit.Item.Get(UnitFacts.Setback), unit);

    /// <summary>Whether it has one by its sheet; where the sheet was not read for it, nobody is told that there is none.</summary>
    private static Inline CentreSupport(Unit unit) => unit.NeedsCentreSupport switch
    {
        false when unit.Kind!.NeedsNoCentreSupport => Ours("no"),
        { } needs when unit.Window.SmallestWidth is null && unit.Item.Get(UnitFacts.OrderWidth) is null =>
            Ours(needs ? "yes, by the rough size" : "no, by the rough size"),
        { } needs => Ours(needs ? "yes" : "no"),
        null => unit.Kind?[CoveringKindFacts.CentreFrom] is null ? Ours("ask the sheet") : Blank,
    };

    /// <summary>Where it sits. By a rough size nobody drills: there are blanks to be measured.</summary>
    private static Inline[] Along(Unit unit, HashSet<string> stopped)
    {
        var name = OpenStops.Stopped(unit.Tag, stopped.Contains(unit.Id));
        if (unit.Window.SmallestWidth is null)
            return Row(name, Blank, Blank, Blank, Blank, Blank, unit.OnPanel ? Blank : Dash);
        return Row(name, At(a => OrBlank(a.From, unit)), At(a => OrBlank(a.LeftBracket, unit)),
            unit.BySheet(u => u.NeedsCentreSupport switch
            {
                null => CentreSupport(u),
                true => OrBlank(AlongOpening.Of(u).Centre, u),
                false => Dash,
            }),
            At(a => OrBlank(a.RightBracket, unit)), At(a => OrBlank(a.To, unit)), unit.OnPanel ? unit.BySheet(u => Shown(u.EntryAlong, u)) : Dash);

        Inline At(Func<AlongOpening, Inline> place) => unit.BySheet(u => place(AlongOpening.Of(u)));
    }

    private static Inline HeadAbove(Unit unit) =>
        unit.Window.Mount == Mount.Outside ? OrBlank(unit.Window.Item.Get(WindowFacts.HeadAbove), unit) : Dash;

    private static Inline Lacking(Fact fact, Unit unit) => fact.Subject == ItemKind.CoveringKind && unit.Kind is { } kind
        ? Ours($"{Ours(fact.Label)}, of {kind.OnPaper()}") : Ours(fact.Label);

    private static Inline Shown(Length? length, Unit unit) => (length?.ShowRounded(unit.House.DisplayUnits)).FigureOrDash();

    private static Inline OrBlank(Length? length, Unit unit) => length is null ? Blank : Shown(length, unit);

    private static Inline OrBlank(Stretch? stretch, Unit unit) => stretch is { } some ? Ours($"{Shown(some.From, unit)} to {Shown(some.To, unit)}") : Blank;
}
