using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>For the electrician: each panel with its outputs, the loads on them, and the sign-off.</summary>
internal static class PanelSchedule
{
    public static Paper Paper
    { get; } = new("panel-schedule", "Panel schedule", "the electrician",
        "Each panel with its outputs, the loads on them, and the sign-off for the mains connection.",
        ShortCover.Write,
        new Section("cautions", "Cautions", Cautions), new Section("panels", "Panels and loads", Panels), new Section("sign_off", "Mains sign-off", SignOff))
    {
        Warns = OpenStops.Of(Phase.Power),
    };

    private static void Cautions(MarkdownWriter to, PaperData data) => to.List(
        Ours("The mains connection is for a licensed electrician, by the code in force; nothing on this paper replaces it."),
        Ours("Low-voltage outputs are power-limited circuits: keep them apart from mains inside the panel and on the way."),
        Ours("Loads are from the makers' sheets as kept in the kit. What nobody checked against a sheet yet may be wrong."));

    private static void Panels(MarkdownWriter to, PaperData data)
    {
        if (data.House.Panels.IsEmpty)
            to.Say("There is no panel in this house.");
        foreach (var panel in data.House.Panels)
        {
            to.Heading(3, $"Panel {panel.Name}");
            var landed = panel.Runs.ToList();
            if (PanelFront.Outputs(panel, landed) > 0)
                to.Draw(panel.Name, PanelFront.Describe(panel, landed), words => PanelFront.Of(panel, landed, words));
            to.Table(["Output", "Unit", "Moves together as", "Cable", "One way", "Running", "Starting", "Volts at the unit, running",
                "Volts at the unit, starting"], landed.Select(r => Row(
                r.Entry(RunFacts.Output), r.Name, r.Unit.Entry(UnitFacts.Group), r.Entry(RunFacts.Cable),
                r.OneWay is { } oneWay ? oneWay.ShowRounded(data.House.DisplayUnits, LengthScale.Run) : Dash,
                r.Unit.Kind?.Entry(CoveringKindFacts.RunningCurrent) ?? Dash, r.Unit.Kind?.Entry(CoveringKindFacts.StartingCurrent) ?? Dash,
                Volts(Expected.WhileRunning(r)), Volts(Expected.WhileStarting(r)))), "Nothing is landed on it.");
            to.Facts("Load", "Figure",
                ("Supply", panel.Type?.Entry(PanelTypeFacts.Supply) ?? Dash),
                ("One output gives at the most", panel.Type?.Entry(PanelTypeFacts.OutputCurrent) ?? Dash),
                ("All outputs together give at the most", panel.Type?.Entry(PanelTypeFacts.TotalCurrent) ?? Dash),
                ("Input from the mains at the most", panel.Type?.Entry(PanelTypeFacts.InputCurrent) ?? Dash),
                ("All units starting at once", Sum(landed)),
                ("Largest group starting at once", LargestGroup(landed)));
        }
        if (!data.House.Panels.IsEmpty)
            to.Say(Ours($"Volts at the unit are worked out with the cable at {new JobItself(data.House).BegunEntry(HouseFacts.ConductorTemperature)}."));
    }

    private static void SignOff(MarkdownWriter to, PaperData data) =>
        to.Table(["Panel", "Location", "Board", "Breaker", "Rating", "All else on it", "Connected by", "Licence", "On", "Signature"],
        data.House.Panels.Select(p => Row(
        p.Name, p.EntryOrBlank(PanelFacts.Location), p.EntryOrBlank(PanelFacts.Board), p.EntryOrBlank(PanelFacts.Breaker),
        p.EntryOrBlank(PanelFacts.BreakerRating), p.EntryOrBlank(PanelFacts.ElseOnBreaker), p.EntryOrBlank(PanelFacts.ConnectedBy),
        p.EntryOrBlank(PanelFacts.Licence), p.EntryOrBlank(PanelFacts.ConnectedOn), Blank)), "There is no panel in this house.");

    private static Inline LargestGroup(List<HomeRun> landed)
    {
        var groups = landed.Where(r => r.Unit.Item.Get(UnitFacts.Group) is not null).GroupBy(r => r.Unit.Item.Get(UnitFacts.Group)!).ToList();
        return groups.MaxBy(g => g.Sum(r => Starting(r)?.Amperes ?? 0)) is { } largest ? Ours($"{largest.Key}: {Sum(largest)}") : Ours("no groups");
    }

    /// <summary>The starting currents together; where one is not known the sum says so, for it is no sum then.</summary>
    private static Inline Sum(IEnumerable<HomeRun> runs)
    {
        var currents = runs.Select(Starting).ToList();
        var known = new Current(currents.Sum(c => c?.Amperes ?? 0));
        var unknown = currents.Count(c => c is null);
        return unknown == 0 ? known.ToString() : Ours($"{known.ToString()}, and {unknown} units whose current is not known");
    }

    private static Inline Volts(Voltage? volts) => volts is { } known ? known.ToString() : Dash;

    private static Current? Starting(HomeRun run) => run.Unit.Kind?.StartingCurrent;
}
