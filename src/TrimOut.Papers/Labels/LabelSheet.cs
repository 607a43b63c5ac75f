using System.Globalization;
using TrimOut.Core;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.Labels;

/// <summary>Labels for both ends of every home run, with a code that a phone reads, and as a table for a label printer.</summary>
internal static class LabelSheet
{
    public static Paper Paper
    { get; } = new("labels", "Cable labels", "the crew", "Labels for both ends of every home run, with codes to scan; as a table for a label printer too.",
        ShortCover.Write,
        new Section("how", "How to use them", How), new Section("labels", "Labels", Labels), new Section("list", "List of labels", List))
    {
        Csv = WriteCsv,
    };

    private static void How(MarkdownWriter to, PaperData data) => to.List(
        Ours("The same words on both ends, and in the house file: as in ANSI/TIA-606, one identifier per cable."),
        Ours("One label within a hand's breadth of each end, a second one where the cable comes out of the wall."),
        Ours("The code holds the unit, the end and the label, with a semicolon between them."));

    private static void Labels(MarkdownWriter to, PaperData data)
    {
        foreach (var sheet in CableEnd.AllOf(data.House).Chunk(LabelDrawing.OnASheet))
            to.Draw("labels", LabelDrawing.Describe(sheet), words => LabelDrawing.Of(sheet, words));
        if (data.House.Runs.IsEmpty)
            to.Say("No home runs yet.");
    }

    private static void List(MarkdownWriter to, PaperData data) => to.Table(["Unit", "Room", "End", "Label", "Panel", "Output", "Stuck on"],
        CableEnd.AllOf(data.House).Select(e => Row(
            e.Run.Name, (e.Run.Unit.Window.Room?.FullName).OrDash(), Ours(e.Where), e.Label, (e.Run.Panel?.Name).OrDash(), e.Run.Output is { } output
                ? Number(output)
                : Dash, Box)),
        "No home runs yet.");

    private static string WriteCsv(PaperData data)
    {
        var csv = new CsvTable(["unit", "room", "end", "label", "panel", "output", "cable", "code"]);
        foreach (var end in CableEnd.AllOf(data.House))
        {
            csv.Row([end.Run.Name, end.Run.Unit.Window.Room?.FullName ?? "", end.Where, end.Label, end.Run.Panel?.Name ?? "",
                end.Run.Output?.ToString(CultureInfo.InvariantCulture) ?? "", end.Run.Cable?.Name ?? "", end.Code]);
        }
        return csv.ToString();
    }
}
