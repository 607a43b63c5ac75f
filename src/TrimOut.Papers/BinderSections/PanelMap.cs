using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every panel with each of its outputs in order.</summary>
internal static class PanelMap
{
    public static Section Section { get; } = new("Panel map", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        if (data.House.Panels.IsEmpty)
            to.Say("There is no panel in this house.");
        foreach (var panel in data.House.Panels)
        {
            to.Heading(3, $"Panel {panel.Name}");
            to.Facts("About", "Entry",
                ("Hangs", panel.Show(PanelFacts.Location).OrDash()),
                ("Type", panel.Show(PanelFacts.Type).OrDash()),
                ("Output voltage", (panel.Type?.Show(PanelTypeFacts.Supply)).OrDash()),
                ("Breaker", panel.Show(PanelFacts.Breaker).OrDash()),
                ("Connected to mains by", panel.Show(PanelFacts.ConnectedBy).OrNotYet()),
                ("Licence", panel.Show(PanelFacts.Licence).OrDash()),
                ("Connected on", panel.Show(PanelFacts.ConnectedOn).OrNotYet()));
            to.Table(["Output", "Unit", "Room", "Label", "Volts, open", "Volts, loaded"], Outputs(panel), "The kit does not say how many outputs it has, and nothing is landed on it.");
        }
        if (data.House.Runs.Where(r => r.Panel is null || r.Output is null).Select(r => r.Name).ToList() is { Count: > 0 } waiting)
            to.Say($"Not landed on an output yet: {string.Join(", ", waiting)}.");
    }

    private static IEnumerable<Inline[]> Outputs(Panel panel)
    {
        var runs = panel.Runs.Where(r => r.Output is not null).ToLookup(r => r.Output!.Value);
        var last = Math.Max(panel.Type?.Outputs ?? 0, runs.Select(r => r.Key).DefaultIfEmpty().Max());
        for (var output = 1; output <= last; output++)
        {
            var number = output.ToString(CultureInfo.InvariantCulture);
            if (!runs.Contains(output))
                yield return Row(number, "free", Absent.Dash, Absent.Dash, Absent.Dash, Absent.Dash);
            foreach (var run in runs[output])
            {
                yield return Row(number, run.Name, (run.Unit.Window.Room?.Name).OrDash(), run.Show(RunFacts.LabelAtPanel).OrDash(),
                    run.Show(RunFacts.OpenVolts).OrNotYet(), run.Show(RunFacts.LoadedVolts).OrNotYet());
            }
        }
    }
}
