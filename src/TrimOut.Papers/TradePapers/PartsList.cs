using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Units;
using TrimOut.Papers.Tables;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>Everything that the house takes, and what each line was counted from.</summary>
internal static class PartsList
{
    public static Paper Paper
    { get; } = new("parts-list", "Parts list", "whoever buys and packs",
        "Everything that the house takes: cable with boxes, panels, remotes by room, wall plates, small parts; each line with what it was counted from.",
        ShortCover.Write,
        Group("coverings", "Coverings", PartGroup.Coverings), Group("cable", "Cable", PartGroup.Cable),
        Group("supplies", "Panels and other supplies", PartGroup.Supplies),
        Group("controls", "Controls", PartGroup.Controls), Group("small", "Small parts", PartGroup.SmallParts), SheetsInUse.Section)
    {
        Table = MakeTable,
        Warns = OpenStops.Of(Phase.WalkThrough, Phase.Measure, Phase.Order),
    };

    private static Section Group(string place, string title, PartGroup group) => new(place, title, (to, data) =>
        to.Table(["Part", "How many", "Counted from"],
            data.Parts.Where(l => l.Group == group).Select(l => Row(
                Said(l.Part, data.House), Counted(l).Marked(!l.Unchecked.IsEmpty), Said(l.CountedFrom, data.House))), "Nothing."));

    private static Inline Counted(PartLine line) => line.Count is not { } count ? NotYet
        : Figure(line.Unit.Length == 0 ? NumberText.Plain(count) : NumberText.Show(count, line.Unit)) is var number && line.AtLeast
            ? Ours($"at least {number}") : number;

    private static SheetTable MakeTable(PaperData data)
    {
        var table = new SheetTable("Parts list", "group", "part", "how many", "unit", "counted from", "not checked against the sheet");
        foreach (var line in data.Parts)
            table.Row(Core.Houses.KebabCase.Of(line.Group), line.Part.In(data.House),
                line is { Count: { } count, AtLeast: false } ? count : line.Shown, line.Unit, line.CountedFrom.In(data.House),
                string.Join("; ", line.Unchecked));
        return table;
    }
}
