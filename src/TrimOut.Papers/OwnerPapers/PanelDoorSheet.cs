using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.BinderSections;
using TrimOut.Papers.TradePapers;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.OwnerPapers;

/// <summary>One sheet for the door of each panel: cautions, what feeds it, what is on each output, and the load.</summary>
internal static class PanelDoorSheet
{
    public static Paper Paper { get; } = new("panel-door", "Panel door sheet", "whoever stands at a panel",
        "One sheet for the door of each panel: cautions, breaker, outputs with their units, and the load.",
        static (_, _) => { }, new Section("doors", "For the door of each panel", Doors))
    {
        Warns = OpenStops.DraftWithPanels,
    };

    private static void Doors(MarkdownWriter to, PaperData data)
    {
        var doubtful = OpenStops.RunsAtPanels(data);
        if (data.House.Panels.IsEmpty)
            to.Say("There is no panel in this house.");
        foreach (var panel in data.House.Panels)
            Door(to, data, panel, doubtful);
    }

    private static void Door(MarkdownWriter to, PaperData data, Panel panel, HashSet<string> doubtful)
    {
        var landed = panel.Runs.ToList();
        to.Heading(3, $"Panel {panel.Name}");
        if (panel.Id != data.House.Panels[0].Id)
            OpenStops.AgainOnAnotherDoor(to, data);
        to.List(
            Strong("Mains inside.") + Ours("Connected and disconnected by a licensed electrician only, who alone works on its mains side, breaker and feed."),
            Strong("Owner.") + Ours("Read this sheet; switch the breaker off at any time, and on again once after it tripped. Open nothing, unplug nothing."),
            Strong("Low-voltage outputs.") + Ours("For people trained on them, with the breaker off, kept off, and the output checked dead."),
            Strong("Local rules come first.") + Ours("The code in force and the maker's sheet govern over this sheet."));
        to.Known("Panel", "Entry", "Nothing was noted of it.",
            // Whoever is to switch it off looks for these here: what nobody noted is written in.
            ("Hangs", panel.EntryOrBlank(PanelFacts.Location)),
            ("Board", panel.EntryOrBlank(PanelFacts.Board)),
            ("Breaker", WhenAUnitStops.Breaker(panel) is var breaker && breaker == Dash ? Blank : breaker),
            ("Input from the mains at the most", panel.Type.EntryOfSheet(PanelTypeFacts.InputCurrent)),
            ("Output voltage; which conductor is plus", landed.Count == 0 ? panel.Type.EntryOfSheet(PanelTypeFacts.Supply)
                : Join("; ", [panel.Type.EntryOfSheet(PanelTypeFacts.Supply), PanelSchedule.Plus(landed)])),
            ("One output gives at the most", panel.Type.EntryOfSheet(PanelTypeFacts.OutputCurrent)),
            ("All outputs together give at the most", panel.Type.EntryOfSheet(PanelTypeFacts.TotalCurrent)),
            ("All units starting at once", landed.Count == 0 ? Dash : PanelSchedule.StartingTogether(landed)));
        to.Filled(["Output", "Unit", "Room", "Label at panel", "Running", "Starting"], Outputs(panel, landed, doubtful),
            "The kit does not say how many outputs it has, and nothing is landed on it.");
        BookCode.Write(to, data, PanelMap.Section.Title);
    }

    private static IEnumerable<Inline[]> Outputs(Panel panel, List<HomeRun> landed, HashSet<string> doubtful)
    {
        foreach (var row in PanelMap.Outputs(panel, landed))
        {
            yield return row.NotWanted is not null ? PanelMap.NotWanted(panel, row) is var (output, name, what) ? Row(output, name, what, Dash, Dash, Dash) : []
                : row.Run is not { } run ? Row(PanelMap.Free(panel, row.First, row.Last), Ours("free"), Dash, Dash, Dash, Dash)
                : Row(OpenStops.Stopped(PanelMap.OutputOf(run), doubtful.Contains(run.Id)), run.Name,
                    (run.Unit.Window.Room?.FullName).OrDash(), run.Entry(RunFacts.LabelAtPanel),
                    run.Unit.Kind.EntryOfSheet(CoveringKindFacts.RunningCurrent), run.Unit.Kind.EntryOfSheet(CoveringKindFacts.StartingCurrent));
        }
    }
}
