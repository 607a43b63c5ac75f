using TrimOut.Papers.Tables;
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
        new Section("how", "How to use them", How), new Section("list", "List of labels", List),
        new Section("labels", "Test print and labels", Labels))
    {
        Table = MakeTable,
        Warns = OpenStops.AtLabels,
    };

    private static void How(MarkdownWriter to, PaperData data) => to.List(
        Ours("The same identifier on both ends, and in the house file, as in ANSI/TIA-606."),
        Ours("One label within a hand's breadth of each end. For a second one where the cable comes out of the wall print these sheets twice."),
        Ours("The code holds the unit, the end, the label and a mark of this house, with a semicolon between them."),
        Ours($"The sheets below are {SheetsOf(data)}, with {data.Labels.Rows} rows of {data.Labels.Columns}."));

    private static Inline SheetsOf(PaperData data) => Ours((data.Labels.IsLetter, data.Labels.CutOut) switch
    {
        (true, true) => "plain paper in Letter, to be cut along the lines",
        (false, true) => "plain paper in A4, to be cut along the lines",
        (true, false) => "sheets of labels in Letter",
        (false, false) => "sheets of labels in A4",
    });

    private static void Labels(MarkdownWriter to, PaperData data)
    {
        to.Say(data.Labels.CutOut
            ? "The first of the next pages is a test print: print it alone, at 100 %, and hold a tape to its rulers. " +
                "Then print the pages behind it, and cut the labels out along the lines."
            : "The first of the next pages is a test print: print it alone, on plain paper, at 100 %. Then print the pages behind it, on the labels.");
        to.Draw("test", LabelSheetDrawing.DescribeTest(data.Labels), words => LabelSheetDrawing.Test(data.Labels, words));
        foreach (var sheet in CableEnd.AllOf(data).Chunk(data.Labels.OnASheet))
            to.Draw("labels", LabelSheetDrawing.Describe(sheet), words => LabelSheetDrawing.Of(sheet, data.Labels, words));
        if (data.House.Runs.IsEmpty)
            to.Say("No home runs yet.");
    }

    private static void List(MarkdownWriter to, PaperData data) => to.Table(["Unit", "Room", "End", "Label", "Panel", "Output", "Stuck on"],
        CableEnd.AllOf(data).Select(e => Row(
            e.Run.Name, (e.Run.Unit.Window.Room?.FullName).OrDash(), Ours(e.Where),
            e.IsWrong ? Ours($"{e.Label}: wrong, not printed") : e.Label, (e.Run.Panel?.Name).OrDash(), e.Run.Output is { } output
                ? Number(output)
                : Dash, Box)),
        "No home runs yet.");

    private static SheetTable MakeTable(PaperData data)
    {
        var table = new SheetTable("Cable labels", "unit", "room", "end", "label", "panel", "output", "cable", "code", "wrong");
        foreach (var end in CableEnd.AllOf(data))
        {
            table.Row(end.Run.Name, end.Run.Unit.Window.Room?.FullName ?? "", end.Where, end.Label, end.Run.Panel?.Name ?? "",
                end.Run.Output is { } output ? output : "", end.Run.Cable?.Name ?? "", end.Code, end.IsWrong ? "yes" : "");
        }
        return table;
    }
}
