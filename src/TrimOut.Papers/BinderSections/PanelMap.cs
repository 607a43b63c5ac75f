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
            if (PanelFront.Outputs(panel, landed) > 0)
                to.Draw(panel.Name, PanelFront.Describe(panel, landed), words => PanelFront.Of(panel, landed, words));
            to.Filled(["Output", "Unit", "Room", "Label at panel", "Label at window", "Cable"], Outputs(panel, landed).Select(o => Row(o.First, o.Last, o.Run)),
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
        var last = PanelFront.Outputs(panel, landed);
        for (var output = 1; output <= last; output++)
        {
            var first = output;
            while (!runs.Contains(first) && output < last && !runs.Contains(output + 1))
                output++;
            if (!runs.Contains(first))
                yield return (first, output, null);
            foreach (var run in runs[output])
                yield return (output, output, run);
        }
    }

    private static Inline[] Row(int first, int last, HomeRun? run) => run is null
        ? MarkdownWriter.Row(first == last ? Number(first) : $"{first}–{last}", Ours("free"), Dash, Dash, Dash, Dash)
        : [Number(first), .. Landed(run)];

    private static Inline[] Landed(HomeRun run) => MarkdownWriter.Row(run.Name, (run.Unit.Window.Room?.FullName).OrDash(),
        run.Entry(RunFacts.LabelAtPanel), run.Entry(RunFacts.LabelAtWindow), run.Entry(RunFacts.Cable));
}
