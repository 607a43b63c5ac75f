using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Papers.Tables;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>For the maker: the sheets as they were frozen, each with its number and day, and what was changed since.</summary>
internal static class OrderSheet
{
    private static readonly Phase[] Stopping = [Phase.WalkThrough, Phase.Measure, Phase.Order];

    public static Paper Paper
    { get; } = new("order-sheet", "Order sheet", "the maker",
        "Sizes, finishes and controls to make, order by order as they were placed, and what changed since.",
        ShortCover.Write,
        new Section("terms", "For whoever makes it", Terms), new Section("sheets", "Orders placed", Sheets),
        new Section("changed", "Changed since the order", Changed),
        new Section("open", "Not ordered yet", NotFrozen), new Section("controls", "Controls and panels", Controls))
    {
        Table = MakeTable,
        Warns = OpenStops.Of(Stopping),
    };

    private const string CautionMark = "\u00A0*";

    /// <summary>What a sheet prints of a unit, in two tables below each other; the file for other programs has both side by side.</summary>
    private static readonly OrderFact[] Made = [OrderFact.Kind, OrderFact.Width, OrderFact.WidthIs, OrderFact.Height, OrderFact.Mount,
        OrderFact.MotorEnd, OrderFact.LeadSide, OrderFact.Power];
    private static readonly OrderFact[] Finish = [OrderFact.Room, OrderFact.Fabric, OrderFact.Colour, OrderFact.Opacity, OrderFact.HeadCover];

    private static void Terms(MarkdownWriter to, PaperData data)
    {
        to.Facts("About", "Entry", ("Our reference", Blank), ("Send to", Blank), ("Needed by", NeededBy(data.House)), ("Ordered by, signature", Blank));
        to.List(
            Ours("Left and right are as seen from inside the room, facing the window: for the motor end and for the lead side too."),
            Ours("The lead side is the end at which the low-voltage lead leaves the unit."),
            Ours("The height is, inside, the largest of the opening; outside, from the top of the unit down to the foot of the opening."),
            Ours("Sizes are in the steps of the maker's sheet: inside, widths rounded down; heights, and widths outside, rounded up."),
            Ours("Mark each box with its box label. What is not clear is asked before it is cut."));
        to.Table(["Kind", "Mount", "What the width is", "Who takes the deduction off", "Motor volts",
            "Roll: standard, fabric at the glass, or reverse, fabric at the room"],
            data.House.Units.Where(u => u.Kind is not null).GroupBy(u => (u.Kind!.Id, u.Window.Mount)).Select(g => Meant([.. g])), "No units yet.");
    }

    /// <summary>The day of the first visit to hang that is planned; a blank where there is none.</summary>
    private static Inline NeededBy(House house) =>
        house.Visits.FirstOrDefault(v => v is { Phase: Phase.Hang, State: VisitState.Planned, On: not null })?.EntryOrBlank(VisitFacts.On) ?? Blank;

    private static Inline[] Meant(List<Unit> units)
    {
        var (unit, kind) = (units[0], units[0].Kind!);
        return Row(kind.OnPaper(), unit.Window.EntryOrBlank(WindowFacts.Mount),
            OrderFact.OrderedWidthOf(unit) is { } ordered ? kind.EntryOrBlank(ordered) : Blank, unit.BySheet(TakenOff),
            kind.EntryOrBlank(CoveringKindFacts.MotorVolts),
            kind.RaisedForm == RaisedForm.Roll ? Blank : Dash);
    }

    /// <summary>Who makes the unit narrower than it is ordered, and by how much we reckon; a blank where the kit does not say.</summary>
    private static Inline TakenOff(Unit unit) => (unit.OrderedWidth, unit.Deduction) switch
    {
        // What has to be off already nobody knows while the sheet was not read for it.
        (OrderedWidth.Made, null) when unit.Window.Mount == Mount.Inside => Ours("ask the sheet"),
        (OrderedWidth.Made, _) => Ours("nobody: it is made as it is ordered"),
        (OrderedWidth.Opening, null) => Ours("the maker"),
        (OrderedWidth.Opening, { } off) when off == Length.Zero => Ours("nobody: nothing comes off"),
        (OrderedWidth.Opening, { } off) => Ours($"the maker: {Figure(off.Show(unit.House.DisplayUnits))} over all"),
        _ => Blank,
    };

    private static void Sheets(MarkdownWriter to, PaperData data)
    {
        var sheets = SheetsOf(data);
        if (sheets.Count == 0)
            to.Say("Nothing is ordered yet.");
        foreach (var (at, sheet) in sheets.Index())
        {
            to.Heading(3, $"Order {at + 1}, placed on {sheet.Key.OnPaper()}");
            Lines(to, [.. sheet.Select(f => f.AsFrozen)], data);
        }
    }

    /// <param name="to">The paper.</param>
    /// <param name="units">The units, as they are to be printed.</param>
    /// <param name="data">What the paper is written from, with the house as it stands.</param>
    private static void Lines(MarkdownWriter to, List<Unit> units, PaperData data)
    {
        var now = data.House;
        var cautions = units.Select(u => now.FindUnit(u.Id)).OfType<Unit>().SelectMany(u => Cautions(data, u), (u, finding) => (u, finding)).ToList();
        var gone = units.Where(u => now.FindUnit(u.Id) is null && now.UnitAlone(u.Id) is not { BoxIsHere: true }).ToList();
        var stops = OpenStops.UnitsStopped(data, units.Select(u => now.FindUnit(u.Id)).OfType<Unit>(), Stopping);
        var stopped = units.FindAll(u => stops.Contains(u.Id));
        var marked = cautions.Select(c => c.u.Id).Concat(gone.Select(u => u.Id)).Concat(stops).ToHashSet();
        to.Say($"Units: {units.Count} ({Kinds(units)}).");
        to.Table(["Box label", .. Made.Select(f => f.Label)], units.Select(u => Row(
            [marked.Contains(u.Id) ? WithBehind(u.Tag, CautionMark) : u.Tag, .. Made.Select(f => Printed(f, u, now))])));
        if (stopped.Count > 0)
            to.Say(Ours($"* A stop at the head of this paper is about {stopped.Select(u => u.Tag).JoinOrDash()}."));
        if (cautions.Count + gone.Count > 0)
        {
            to.Say("* To be cleared up:");
            to.Table(["Box label", "What is wrong", "How to fix it"], cautions.Select(c => Row(
                c.u.Tag, SheetMarks.Said(data, c.finding), Said(c.finding.Found.Mend, now)))
                .Concat(gone.Select(u => Row(u.Tag, Ours($"Not in the house any more: {Ours(SinceFrozen.WhyGone(u, now))}"),
                    Ours("Ask whether it is still wanted.")))));
        }

        to.Table(["Box label", .. Finish.Select(f => f.Label), "Maker's number"],
            units.Select(u => Row([u.Tag, .. Finish.Select(f => f.Entry(u)), MakersNumber(now, u) is { Length: > 0 } number ? number : NotYet])));
    }

    /// <summary>What of an order is doubtful, and no stop that stands at the head of the paper.</summary>
    private static IEnumerable<Finding> Cautions(PaperData data, Unit unit) =>
        data.Report.About(unit).Where(f => f is { Open: true, Check: { Severity: Severity.Caution, Phase: Phase.Order } }).Concat(InDispute(data, unit));

    /// <summary>Values that two laptops put differently, of the unit and of the window that it is made for.</summary>
    private static IEnumerable<Finding> InDispute(PaperData data, Unit unit) =>
        data.Report.About(unit).Where(f => f is { Open: true, Check.Id: ValuesDisagree.Id, Subject.Kind: not ItemKind.Run });

    /// <summary>What the width is nobody may guess: where the kit was silent it is what it says today, or else a blank to write in.</summary>
    private static Inline Printed(OrderFact fact, Unit unit, House now) =>
        fact.Entry(Sayer(fact, unit, now)) is var entry && entry == Dash && fact == OrderFact.WidthIs ? Blank : entry;

    /// <summary>Who says it: as it was frozen; where nothing else is said today the unit of today, whose values may have been checked since.</summary>
    private static Unit Sayer(OrderFact fact, Unit unit, House now) =>
        now.FindUnit(unit.Id) is { } today && (fact.Same(unit, today) || (fact == OrderFact.WidthIs && unit.OrderedWidth is null)) ? today : unit;

    /// <summary>How many of each kind.</summary>
    private static Inline Kinds(List<Unit> units) =>
        Join(", ", [.. units.GroupBy(u => u.Kind?.Id).Select(g => Ours($"{OrderFact.Kind.Entry(g.First())}: {g.Count()}"))]);

    private static void Changed(MarkdownWriter to, PaperData data) =>
        to.Table(["Box label", "What", "As ordered", "Now", "By", "When"], new SinceFrozen(data.Log, data.Frozen).Rows(), "Nothing.");

    private static void NotFrozen(MarkdownWriter to, PaperData data)
    {
        if (NotFrozen(data.House).ToList() is { Count: > 0 } open)
        {
            to.Say("Not to be made: these sizes may still change.");
            Lines(to, open, data);
        }
        else
        {
            to.Say("None.");
        }
    }

    private static void Controls(MarkdownWriter to, PaperData data)
    {
        to.Table(["What", "Type", "How many"], SinceFrozen.ControlsOf(data.House).Select(c => Row(Ours(c.What), SinceFrozen.TypeOf(c.Type), Number(c.Count))),
            "None.");
        to.Say("All that the house has. What of it is here, and what is to be ordered, stands in the parts list.");
    }

    private static IEnumerable<Unit> NotFrozen(House house) => house.Units.Where(u => u.Item.Get(UnitFacts.OrderedOn) is null);

    /// <summary>The frozen units by the day of their sheet, in walking order; those that are not in the house any more come last.</summary>
    private static List<IGrouping<DateOnly, FrozenUnit>> SheetsOf(PaperData data)
    {
        var place = data.House.Units.Select((u, at) => (u.Id, at)).ToDictionary(p => p.Id, p => p.at);
        return [.. data.Frozen.OrderBy(f => f.On).ThenBy(f => place.GetValueOrDefault(f.AsFrozen.Id, int.MaxValue)).ThenBy(f => f.AsFrozen.Item.Place)
            .GroupBy(f => f.On)];
    }

    /// <summary>As it stands: it comes only after the freeze, and is needed most where a unit that was ordered is not wanted any more.</summary>
    private static string MakersNumber(House now, Unit unit) => UnitFacts.Acknowledgement.ShowOf(now.Find(unit.Id) ?? unit.Item, now);

    private static SheetTable MakeTable(PaperData data)
    {
        OrderFact[] facts = [.. Made, .. Finish];
        var table = new SheetTable("Order sheet",
            ["order", "box label", .. facts.Select(f => f.HeadIn(data.House.DisplayUnits)), "maker's number", "changed since the order",
                "not checked against the sheet", "two laptops disagree"]);
        var since = new SinceFrozen(data.Log, data.Frozen);
        foreach (var (at, sheet) in SheetsOf(data).Index())
        {
            foreach (var unit in sheet)
                Write(at + 1, unit.AsFrozen, string.Join("; ", since.Of(unit)));
        }
        foreach (var unit in NotFrozen(data.House))
            Write("", unit, "");
        return table;

        void Write(SheetCell sheet, Unit unit, string changed) => table.Row(
            [sheet, unit.Tag, .. facts.Select(f => f.Value(Sayer(f, unit, data.House))), MakersNumber(data.House, unit), changed,
                string.Join("; ", facts.SelectMany(f => f.UncheckedBehind(Sayer(f, unit, data.House))).Distinct().Select(f => f.Label)),
                data.House.FindUnit(unit.Id) is { } now
                    ? string.Join("; ", InDispute(data, now).Select(f => f.Found.Message.In(data.House))) : ""]);
    }
}
