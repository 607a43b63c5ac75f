using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.BinderSections;

/// <summary>
/// Every panel with each of its outputs in order. Where it hangs and its breaker stand on the first page, who connected it at the signatures.
/// </summary>
internal static class PanelMap
{
    public static Section Section { get; } = new("panels", "Panel map", Write) { Part = "Part two: for the trade" };

    private static void Write(MarkdownWriter to, PaperData data)
    {
        if (data.House.Panels.IsEmpty)
            to.Say("There is no panel in this house.");
        var doubtful = OpenStops.RunsAtPanels(data);
        foreach (var panel in data.House.Panels)
        {
            to.Heading(3, $"Panel {panel.Name}");
            var landed = panel.Runs.ToList();
            if (panel.Type is { } type)
                to.Say($"{type.OnPaper()}; output voltage {type.Entry(PanelTypeFacts.Supply)}.");
            if (panel.OutputNumbers.Count > 0)
                to.Draw(panel.Name, PanelFront.Describe(panel, landed), words => PanelFront.Of(panel, landed, words));
            to.Filled(["Output", "Unit", "Room", "Label at panel", "Label at window", "Cable"],
                Outputs(panel, landed).Select(o => Row(panel, o, doubtful)),
                "The kit does not say how many outputs it has, and nothing is landed on it.");
        }
        if (data.House.Runs.Where(r => r.Panel is null || r.Output is null).ToList() is { Count: > 0 } waiting)
        {
            to.Heading(3, "Not landed on an output yet");
            to.Filled(["Unit", "Room", "Label at panel", "Label at window", "Cable"], waiting.Select(Landed));
        }
    }

    /// <summary>The outputs in order with what is landed on them, those in a row that are free together.</summary>
    public static IEnumerable<OutputRow> Outputs(Panel panel, List<HomeRun> landed)
    {
        var runs = landed.Where(r => r.Output is not null).ToLookup(r => r.Output!.Value);
        var notWanted = panel.NotWanted.ToLookup(n => n.Output, n => n.Run);
        var outputs = panel.OutputNumbers;
        bool IsFree(int output) => !runs.Contains(output) && !notWanted.Contains(output);
        for (var at = 0; at < outputs.Count; at++)
        {
            var first = outputs[at];
            while (IsFree(first) && at + 1 < outputs.Count && IsFree(outputs[at + 1]))
                at++;
            if (IsFree(first))
                yield return new(first, outputs[at], null, null);
            foreach (var run in runs[first])
                yield return new(first, first, run, null);
            foreach (var run in notWanted[first])
                yield return new(first, first, null, run);
        }
    }

    /// <summary>What stands of a cable that is landed though nobody wants it: its output, its name, and that it is live.</summary>
    public static (Inline Output, Inline Name, Inline What) NotWanted(Panel panel, OutputRow row) => (
        OpenStops.Stopped(Number(row.First), true), NameOf(panel.House, row.NotWanted!), Ours("not wanted, and landed: it is live"));

    /// <summary>
    /// The number of a free output, or of the first and the last of some; marked where they end where the sheet says, and nobody checked that.
    /// </summary>
    public static Inline Free(Panel panel, int first, int last) => (first == last ? Number(first) : $"{first}–{last}")
        .Marked(panel.Type is { } type && type.Outputs == last && !type.IsChecked(PanelTypeFacts.Outputs));

    /// <summary>The output of a run; said where its panel has none of that number.</summary>
    public static Inline OutputOf(HomeRun run) => run is { Panel: { } panel, Output: { } output } && panel.HasNo(output)
        ? run.BySheet(r => r.Panel!.HasNo(output) ? Ours($"{output}: the panel has no such output") : Number(output)) : run.Entry(RunFacts.Output);

    private static Inline[] Row(Panel panel, OutputRow row, HashSet<string> doubtful) => row switch
    {
        { Run: { } run } => [OpenStops.Stopped(OutputOf(run), doubtful.Contains(run.Id)), .. Landed(run)],
        { NotWanted: not null } => NotWanted(panel, row) is var (output, name, what) ? MarkdownWriter.Row(output, name, what, Dash, Dash, Dash) : [],
        _ => MarkdownWriter.Row(Free(panel, row.First, row.Last), Ours("free"), Dash, Dash, Dash, Dash),
    };

    private static Inline[] Landed(HomeRun run) => MarkdownWriter.Row(run.Name, (run.Unit.Window.Room?.FullName).OrDash(),
        run.Entry(RunFacts.LabelAtPanel), run.Entry(RunFacts.LabelAtWindow), run.Entry(RunFacts.Cable));
}

/// <summary>An output with what is landed on it, or several in a row that are free.</summary>
/// <param name="First">The output, or the first of those that are free.</param>
/// <param name="Last">The same, or the last of them.</param>
/// <param name="Run">The run; null where none is wanted there.</param>
/// <param name="NotWanted">The run, as an item, of a unit that is said to need none; null where there is none.</param>
internal sealed record OutputRow(int First, int Last, HomeRun? Run, Item? NotWanted);
