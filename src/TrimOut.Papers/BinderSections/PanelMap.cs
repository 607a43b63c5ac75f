using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every panel with each of its outputs in order.</summary>
internal static class PanelMap
{
    public static Section Section { get; } = new("panels", "Panel map", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        if (data.House.Panels.IsEmpty)
            to.Say("There is no panel in this house.");
        foreach (var panel in data.House.Panels)
        {
            to.Heading(3, $"Panel {panel.Name}");
            to.Facts("About", "Entry",
                ("Hangs", panel.Entry(PanelFacts.Location)),
                ("Type", panel.Entry(PanelFacts.Type)),
                ("Output voltage", panel.Type?.Entry(PanelTypeFacts.Supply) ?? Dash),
                ("Board", panel.Entry(PanelFacts.Board)),
                ("Breaker", panel.Entry(PanelFacts.Breaker)),
                ("Breaker rating", panel.Entry(PanelFacts.BreakerRating)),
                ("Connected to mains by", panel.EntryOrNotYet(PanelFacts.ConnectedBy)),
                ("Licence", panel.Entry(PanelFacts.Licence)),
                ("Connected on", panel.EntryOrNotYet(PanelFacts.ConnectedOn)));
            var landed = panel.Runs.ToList();
            if (PanelFront.Outputs(panel, landed) > 0)
                to.Draw(panel.Name, PanelFront.Describe(panel, landed), words => PanelFront.Of(panel, landed, words));
            to.Table(["Output", "Unit", "Room", "Label", "Volts, open", "Volts, loaded"], Outputs(panel, landed),
                "The kit does not say how many outputs it has, and nothing is landed on it.");
        }
        if (data.House.Runs.Where(r => r.Panel is null || r.Output is null).Select(r => r.Name).ToList() is { Count: > 0 } waiting)
            to.Say($"Not landed on an output yet: {string.Join(", ", waiting)}.");
    }

    private static IEnumerable<Inline[]> Outputs(Panel panel, List<HomeRun> landed)
    {
        var runs = landed.Where(r => r.Output is not null).ToLookup(r => r.Output!.Value);
        var last = PanelFront.Outputs(panel, landed);
        for (var output = 1; output <= last; output++)
        {
            var number = Number(output);
            if (!runs.Contains(output))
                yield return Row(number, Ours("free"), Dash, Dash, Dash, Dash);
            foreach (var run in runs[output])
            {
                yield return Row(number, run.Name, (run.Unit.Window.Room?.FullName).OrDash(), run.Entry(RunFacts.LabelAtPanel),
                    run.EntryOrNotYet(RunFacts.OpenVolts), run.EntryOrNotYet(RunFacts.LoadedVolts));
            }
        }
    }
}
