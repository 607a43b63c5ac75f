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
        foreach (var panel in data.House.Panels)
        {
            to.Heading(3, $"Panel {panel.Name}");
            var landed = panel.Runs.ToList();
            if (panel.Type is { } type)
                to.Say($"{type.OnPaper()}; output voltage {type.Entry(PanelTypeFacts.Supply)}.");
            if (panel.OutputNumbers.Count > 0)
                to.Draw(panel.Name, PanelFront.Describe(panel, landed), words => PanelFront.Of(panel, landed, words));
            to.Filled(["Output", "Unit", "Room", "Label at panel", "Label at window", "Cable"], Outputs(panel, landed).Select(o => Row(panel, o.First, o.Last, o.Run)),
                "The kit does not say how many outputs it has, and nothing is landed on it.");
        }
        if (data.House.Runs.Where(r => r.Panel is null || r.Output is null).ToList() is { Count: > 0 } waiting)
        {
            to.Heading(3, "Not landed on an output yet");
            to.Filled(["Unit", "Room", "Label at panel", "Label at window", "Cable"], waiting.Select(Landed));
        }
    }

    /// <summary>The outputs in order with what is landed on them, those in a row that are free together: first, last, and the run; null where free.</summary>
    public static IEnumerable<(int First, int Last, HomeRun? Run)> Outputs(Panel panel, List<HomeRun> landed)
    {
        var runs = landed.Where(r => r.Output is not null).ToLookup(r => r.Output!.Value);
        var outputs = panel.OutputNumbers;
        for (var at = 0; at < outputs.Count; at++)
        {
            var first = outputs[at];
            while (!runs.Contains(first) && at + 1 < outputs.Count && !runs.Contains(outputs[at + 1]))
                at++;
            if (!runs.Contains(first))
                yield return (first, outputs[at], null);
            foreach (var run in runs[first])
                yield return (first, first, run);
        }
    }

    /// <summary>The number of a free output, or of the first and the last of some; marked where they end where the sheet says, and nobody checked that.</summary>
    public static Inline Free(Panel panel, int first, int last) => (first == last ? Number(first) : $"{first}–{last}")
        .Marked(panel.Type is { } type && type.Outputs == last && !type.IsChecked(PanelTypeFacts.Outputs));

    /// <summary>The output of a run; said where its panel has none of that number.</summary>
    public static Inline OutputOf(HomeRun run) => run is { Panel: { } panel, Output: { } output } && panel.HasNo(output)
        ? run.BySheet(r => r.Panel!.HasNo(output) ? Ours($"{output}: the panel has no such output") : Number(output)) : run.Entry(RunFacts.Output);

    private static Inline[] Row(Panel panel, int first, int last, HomeRun? run) => run is null
        ? MarkdownWriter.Row(Free(panel, first, last), Ours("free"), Dash, Dash, Dash, Dash)
        : [OutputOf(run), .. Landed(run)];

    private static Inline[] Landed(HomeRun run) => MarkdownWriter.Row(run.Name, (run.Unit.Window.Room?.FullName).OrDash(),
        run.Entry(RunFacts.LabelAtPanel), run.Entry(RunFacts.LabelAtWindow), run.Entry(RunFacts.Cable));
}
