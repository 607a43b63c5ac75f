using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>For the maker: the frozen sheets, each with its number and day, and what was changed since.</summary>
internal static class OrderSheet
{
    public static Paper Paper { get; } = new("order-sheet", "Order sheet", "the maker", "Sizes, finishes and controls to make, sheet by sheet as they were frozen, and what changed since.",
        ShortCover.Write,
        new Section("sheets", "Frozen sheets", Sheets), new Section("changed", "Changed since they were frozen", Changed),
        new Section("open", "Not frozen yet", NotFrozen), new Section("controls", "Controls and panels", Controls))
    {
        Csv = WriteCsv,
    };

    private static readonly Fact[] Ordered =
    [
        UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Power, UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity,
        UnitFacts.HeadCover, UnitFacts.OrderWidth, UnitFacts.OrderHeight,
    ];

    private static void Sheets(MarkdownWriter to, PaperData data)
    {
        var sheets = Frozen(data.House).ToList();
        if (sheets.Count == 0)
            to.Say("No sheet is frozen yet.");
        for (var at = 0; at < sheets.Count; at++)
        {
            to.Heading(3, $"Sheet {at + 1}, frozen on {sheets[at].Key.OnPaper()}");
            Lines(to, [.. sheets[at]]);
        }
    }

    private static void Lines(MarkdownWriter to, List<Unit> units)
    {
        to.Table(["Box label", "Kind", "Width", "Height", "Mount", "Motor end", "Lead side", "Power"], units.Select(u => Row(
            u.Tag, u.Entry(UnitFacts.Kind), u.Entry(UnitFacts.OrderWidth), u.Entry(UnitFacts.OrderHeight), u.Window.Entry(WindowFacts.Mount),
            u.Kind?.Entry(CoveringKindFacts.MotorEnd) ?? Dash, u.Entry(UnitFacts.LeadSide), u.Entry(UnitFacts.Power))));
        to.Table(["Box label", "Fabric", "Colour", "Opacity", "Head cover", "Maker's number"], units.Select(u => Row(
            u.Tag, u.Entry(UnitFacts.Fabric), u.Entry(UnitFacts.Colour), u.Entry(UnitFacts.Opacity), u.Entry(UnitFacts.HeadCover), u.EntryOrNotYet(UnitFacts.Acknowledgement))));
    }

    private static void Changed(MarkdownWriter to, PaperData data) => to.Table(["Box label", "What", "Now", "By", "When"],
        from unit in data.House.Units
        let frozen = unit.Item.Latest(UnitFacts.OrderedOn.Name)
        where frozen?.Stored is not null
        from fact in Ordered
        let now = unit.Item.Latest(fact.Name)
        where now is not null && now.IsAfter(frozen)
        select Row(unit.Tag, Ours(fact.Label), unit.Entry(fact), now.By, now.At.OnPaper()),
        "Nothing.");

    private static void NotFrozen(MarkdownWriter to, PaperData data)
    {
        if (data.House.Units.Where(u => u.Item.Get(UnitFacts.OrderedOn) is null).ToList() is { Count: > 0 } open)
        {
            to.Say("Not to be made: these sizes may still change.");
            Lines(to, open);
        }
        else
        {
            to.Say("None.");
        }
    }

    private static void Controls(MarkdownWriter to, PaperData data) => to.Table(["What", "Type", "How many"],
    [
        .. Count(Ours("Remote"), data.House.Remotes, RemoteFacts.Type), .. Count(Ours("Hub"), data.House.Hubs, HubFacts.Type), .. Count(Ours("Panel"), data.House.Panels, PanelFacts.Type),
    ]);

    private static IEnumerable<Inline[]> Count(Inline what, IEnumerable<Subject> subjects, Fact type) =>
        subjects.GroupBy(s => s.Show(type)).Select(g => Row(what, g.Key.OrDash(), Number(g.Count())));

    private static IOrderedEnumerable<IGrouping<DateOnly, Unit>> Frozen(House house) =>
        house.Units.Where(u => u.Item.Get(UnitFacts.OrderedOn) is not null).GroupBy(u => u.Item.Get(UnitFacts.OrderedOn)!.Value).OrderBy(g => g.Key);

    private static string WriteCsv(PaperData data)
    {
        var csv = new CsvTable(["sheet", "box label", "room", .. Ordered.Select(f => f.Label.ToLowerInvariant()), "mount", "maker's number"]);
        var sheets = Frozen(data.House).Select((g, at) => (g.Key, Number: at + 1)).ToDictionary(s => s.Key, s => s.Number);
        foreach (var unit in data.House.Units)
        {
            var sheet = unit.Item.Get(UnitFacts.OrderedOn) is { } on ? sheets[on].ToString(System.Globalization.CultureInfo.InvariantCulture) : "";
            csv.Row([sheet, unit.Tag, unit.Window.Room?.Name ?? "", .. Ordered.Select(f => unit.Show(f)), unit.Window.Show(WindowFacts.Mount), unit.Show(UnitFacts.Acknowledgement)]);
        }
        return csv.ToString();
    }
}
