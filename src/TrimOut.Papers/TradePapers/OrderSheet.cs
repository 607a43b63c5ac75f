using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Tables;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>For the maker: the sheets as they were frozen, each with its number and day, and what was changed since.</summary>
internal static class OrderSheet
{
    public static Paper Paper
    { get; } = new("order-sheet", "Order sheet", "the maker",
        "Sizes, finishes and controls to make, order by order as they were placed, and what changed since.",
        ShortCover.Write,
        new Section("terms", "For whoever makes it", Terms), new Section("sheets", "Orders placed", Sheets),
        new Section("changed", "Changed since the order", Changed),
        new Section("open", "Not ordered yet", NotFrozen), new Section("controls", "Controls and panels", Controls))
    {
        Table = MakeTable,
        Warns = OpenStops.UpTo(Phase.Order),
    };

    /// <summary>What a sheet prints of a unit, in two tables below each other; the file for other programs has both side by side.</summary>
    private static readonly OrderFact[] Made = [OrderFact.Kind, OrderFact.Width, OrderFact.Height, OrderFact.Mount, OrderFact.MotorEnd,
        OrderFact.LeadSide, OrderFact.Power];
    private static readonly OrderFact[] Finish = [OrderFact.Room, OrderFact.Fabric, OrderFact.Colour, OrderFact.Opacity, OrderFact.HeadCover];

    private static void Terms(MarkdownWriter to, PaperData data)
    {
        to.Facts("About", "Entry", ("Our reference", Blank), ("Send to", Blank), ("Needed by", Blank), ("Ordered by, signature", Blank));
        to.Table(["Kind", "Mount", "Units", "What the width is", "Who takes the deduction off", "Roll comes down at the glass or the room side"],
            data.House.Units.Where(u => u.Kind is not null).GroupBy(u => (u.Kind!.Id, u.Window.Mount)).Select(g => Meant(g.First(), g.Count())),
            "No units yet.");
    }

    private static Inline[] Meant(Unit unit, int units)
    {
        var kind = unit.Kind!;
        var width = unit.Window.Mount is { } mount ? kind.EntryOrBlank(CoveringKindFacts.OrderedWidthAt(mount)) : Blank;
        return Row(kind.OnPaper(), unit.Window.EntryOrBlank(WindowFacts.Mount), Number(units), width, unit.OrderedWidth switch
        {
            OrderedWidth.Opening => Ours("the maker"),
            // How much that is, nobody knows while the sheet was not read for it: then it is not off either.
            OrderedWidth.Made => unit.Deduction is null ? Ours("ask the sheet") : Ours("nobody any more: it is off"),
            _ => Blank,
        }, kind.RaisedForm == RaisedForm.Roll ? Blank : Dash);
    }

    private static void Sheets(MarkdownWriter to, PaperData data)
    {
        var sheets = SheetsOf(data);
        if (sheets.Count == 0)
            to.Say("Nothing is ordered yet.");
        foreach (var (at, sheet) in sheets.Index())
        {
            to.Heading(3, $"Order {at + 1}, placed on {sheet.Key.OnPaper()}");
            Lines(to, [.. sheet.Select(f => f.AsFrozen)], data.House);
        }
    }

    /// <param name="to">The paper.</param>
    /// <param name="units">The units, as they are to be printed.</param>
    /// <param name="now">The house as it stands.</param>
    private static void Lines(MarkdownWriter to, List<Unit> units, House now)
    {
        to.Table(["Box label", .. Made.Select(f => f.Label)], units.Select(u => Row([u.Tag, .. Made.Select(f => f.Entry(u))])));
        to.Table(["Box label", .. Finish.Select(f => f.Label), "Maker's number"],
            units.Select(u => Row([u.Tag, .. Finish.Select(f => f.Entry(u)), MakersNumber(now, u) is { Length: > 0 } number ? number : NotYet])));
    }

    private static void Changed(MarkdownWriter to, PaperData data) =>
        to.Table(["Box label", "What", "As ordered", "Now", "By", "When"], new SinceFrozen(data.Log, data.Frozen).Rows(), "Nothing.");

    private static void NotFrozen(MarkdownWriter to, PaperData data)
    {
        if (NotFrozen(data.House).ToList() is { Count: > 0 } open)
        {
            to.Say("Not to be made: these sizes may still change.");
            Lines(to, open, data.House);
        }
        else
        {
            to.Say("None.");
        }
    }

    private static void Controls(MarkdownWriter to, PaperData data) =>
        to.Table(["What", "Type", "How many"], SinceFrozen.ControlsOf(data.House).Select(c => Row(Ours(c.What), c.Type.OrDash(), Number(c.Count))));

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
            ["order", "box label", .. facts.Select(f => f.HeadIn(data.House.DisplayUnits)), "maker's number", "changed since the order"]);
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
            [sheet, unit.Tag, .. facts.Select(f => f.Value(unit)), MakersNumber(data.House, unit), changed]);
    }
}
