using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Units;
using TrimOut.Papers.Tables;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>Everything that the house takes, by when it must be ordered, and what each line was counted from.</summary>
internal static class PartsList
{
    public static Paper Paper
    { get; } = new("parts-list", "Parts list", "whoever buys and packs",
        "Everything that the house takes: cable with boxes, panels, remotes by room, wall plates, small parts, spare parts; each line with what it was "
            + "counted from, the phase that it is needed in and the last day to order it.",
        ShortCover.Write,
        new Section("call-off", "Call-off by phase", ByPhase),
        Group("coverings", "Coverings", PartGroup.Coverings), Group("cable", "Cable", PartGroup.Cable),
        Group("supplies", "Panels and other supplies", PartGroup.Supplies),
        Group("controls", "Controls", PartGroup.Controls), Group("small", "Small parts", PartGroup.SmallParts),
        Group("spares", "Spare parts", PartGroup.Spares), SheetsInUse.Section)
    {
        Table = MakeTable,
        Warns = OpenStops.Of(Phase.WalkThrough, Phase.Measure, Phase.Order, Phase.Pair),
        Landscape = true,
    };

    private static void ByPhase(MarkdownWriter to, PaperData data)
    {
        to.Table(["Needed in", "Here by", "Order by", "How it stands"], data.CallOffs.GroupBy(c => (c.Line.NeededIn, c.Line.MadeFor.IsEmpty))
            .OrderBy(g => g.Key.NeededIn).ThenBy(g => g.Key.IsEmpty).Select(g => Row(
                g.Key.IsEmpty ? Ours(g.Key.NeededIn.Full()) : Ours($"{Ours(g.Key.NeededIn.Full())}: the units"),
                Day(g.First().NeededBy), LastDay(g.FirstOrDefault(c => c.State == CallOffState.Open, g.First()), data.Date), Stands(g.ToList()))), "Nothing.");
        if (data.CallOffs.Any(c => c.State == CallOffState.Here))
            to.Say("Here already: by the marks of the work and the boxes that came; nobody counted it.");
        var open = data.CallOffs.Where(c => c.State == CallOffState.Open).ToList();
        if (data.House.Job.Get(HouseFacts.OrderLead) is null && open.Exists(c => !c.Line.MadeFor.IsEmpty))
            to.Say($"By when to order the units can't be said: nobody noted under {Ours(HouseFacts.OrderLead.Label)} how long that is.");
        if (data.House.Job.Get(HouseFacts.PartsLead) is null && open.Exists(c => c.Line.MadeFor.IsEmpty))
            to.Say($"By when to order all else can't be said: nobody noted under {Ours(HouseFacts.PartsLead.Label)} how long that is.");
    }

    private static Inline Stands(List<CallOff> of) => of.FindAll(c => c.State == CallOffState.Open) is { Count: > 0 } open
        ? open.Exists(c => c.NotOrdered.IsEmpty) ? Ours("to be ordered")
            : Ours($"not ordered: {open.SelectMany(c => c.NotOrdered).Distinct().JoinOrDash()}")
        : of.Select(c => c.OrderedOn).Max() is { } on ? Ours($"ordered on {on.OnPaper()}")
        : of.Exists(c => c.State == CallOffState.Here) ? Ours("here already") : Ours("nothing to order");

    /// <summary>The last day to order it on, and that it is past, or the day to have it by, where it is still to be ordered.</summary>
    private static Inline LastDay(CallOff call, DateOnly today) => call.State == CallOffState.Open && call.LastDay < today
        ? call.OrderBy is { } last ? Ours($"late: {last.OnPaper()}") : Ours("late") : Day(call.OrderBy);

    private static Inline Day(DateOnly? day) => day is { } known ? known.OnPaper() : Dash;

    private static Section Group(string place, string title, PartGroup group) => new(place, title, (to, data) =>
        to.Filled(["Part", "How many", "Needed in", "Here by", "Order by, or ordered", "Counted from"],
            data.CallOffs.Where(c => c.Line.Group == group).Select(c => Row(
                Said(c.Line.Part, data.House), StillToOrder(c, Counted(c.Line)).Marked(!c.Line.Unchecked.IsEmpty), Ours(c.Line.NeededIn.Full()),
                Day(c.NeededBy),
                c.State == CallOffState.CalledOff && c.OrderedOn is { } on ? Ours($"ordered on {on.OnPaper()}")
                    : c.State == CallOffState.Here ? Ours("here already") : LastDay(c, data.Date),
                Said(c.Line.CountedFrom, data.House))), "Nothing."));

    /// <summary>The count, and how much of it is still to be ordered where that is less; what that is for can be without a count yet.</summary>
    private static Inline StillToOrder(CallOff call, Inline count) =>
        call.Left is { } left ? left != call.Line.Count ? Ours($"{count}; still to order: {Number(call.Line.Unit, left)}") : count
        : call is { State: CallOffState.Open, NotOrdered.IsEmpty: false, Line.Count: not null }
            ? Ours($"{count}; still to order, not counted yet: {call.NotOrdered.JoinOrDash()}") : count;

    private static Inline Number(string unit, decimal count) => Figure(unit.Length == 0 ? NumberText.Plain(count) : NumberText.Show(count, unit));

    private static Inline Counted(PartLine line) => line.Count is not { } count ? NotYet
        : Number(line.Unit, count) is var number && line.AtLeast ? Ours($"at least {number}") : number;

    private static SheetTable MakeTable(PaperData data)
    {
        var table = new SheetTable("Parts list", "group", "part", "how many", "unit", "counted from", "not checked against the sheet",
            "needed in", "here by", "order by", "ordered on", "not ordered for", "still to order");
        foreach (var call in data.CallOffs)
        {
            var (line, needed, orderBy, _, ordered, waiting) = call;
            table.Row(KebabCase.Of(line.Group), line.Part.In(data.House),
                line is { Count: { } count, AtLeast: false } ? count : line.Shown, line.Unit, line.CountedFrom.In(data.House),
                string.Join("; ", line.Unchecked), KebabCase.Of(line.NeededIn), Iso(needed), Iso(orderBy), Iso(ordered), string.Join(", ", waiting),
                call.Left is { } left ? left : "");
        }
        return table;
    }

    private static string Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
