using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.BinderSections;
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
        new Section("cautions", "Cautions", Cautions), new Section("sign_off", "Mains sign-off", SignOff), new Section("panels", "Panels and loads", Panels))
    {
        Warns = OpenStops.OfPanels,
    };

    private static void Cautions(MarkdownWriter to, PaperData data) => to.List(
        Ours("The mains connection is for a licensed electrician, by the code in force; nothing on this paper replaces it."),
        Ours("Low-voltage outputs are power-limited circuits: keep them apart from mains inside the panel and on the way."),
        Ours("Loads are from the makers' sheets as kept in the kit. What nobody checked against a sheet yet may be wrong."),
        Ours($"Volts at the unit are worked out with the cable at {new JobItself(data.House).BegunEntry(HouseFacts.ConductorTemperature)}."));

    private static void Panels(MarkdownWriter to, PaperData data)
    {
        if (data.House.Panels.IsEmpty)
            to.Say("There is no panel in this house.");
        var doubtful = OpenStops.RunsAtPanels(data);
        foreach (var panel in data.House.Panels)
        {
            to.Heading(3, $"Panel {panel.Name}");
            var landed = panel.Runs.ToList();
            if (panel.OutputNumbers.Count > 0)
                to.Draw(panel.Name, PanelFront.Describe(panel, landed), words => PanelFront.Of(panel, landed, words));
            Mains(to, panel);
            Outputs(to, panel, landed, doubtful);
            to.Facts("Low-voltage side", "Figure",
                ("Output voltage; which conductor is plus", Join("; ", [panel.Type.EntryOfSheet(PanelTypeFacts.Supply), Plus(landed)])),
                ("One output gives at the most", panel.Type.EntryOfSheet(PanelTypeFacts.OutputCurrent)),
                ("All outputs together give at the most", panel.Type.EntryOfSheet(PanelTypeFacts.TotalCurrent)),
                ("All units running at once", Sum(landed, CoveringKindFacts.RunningCurrent)),
                ("All units starting at once", StartingTogether(landed)),
                ("Largest group starting at once", LargestGroup(panel, landed)));
            AllAtOnce(to, panel, landed);
        }
    }

    /// <summary>Which conductor is plus, of each cable that is landed; a blank while nothing is, or nobody noted it.</summary>
    public static Inline Plus(List<HomeRun> landed) => landed.Select(r => r.Cable).OfType<CableType>().DistinctBy(c => c.Id).ToList() is { Count: > 0 } cables
        ? Join("; ", [.. cables.Select(c => Ours($"{c.Name}: {c.EntryOrBlank(CableTypeFacts.Plus)}"))]) : Blank;

    /// <summary>That all units together are more than the panel gives, where they are.</summary>
    private static void AllAtOnce(MarkdownWriter to, Panel panel, List<HomeRun> landed)
    {
        Fact<Current>[] drawn = [CoveringKindFacts.RunningCurrent, CoveringKindFacts.StartingCurrent];
        if (panel.Type is not { TotalCurrent: { } most } type || drawn.Max(f => landed.Sum(r => Drawn(r, f)?.Amperes ?? 0)) <= most.Amperes)
            return;
        to.Say(Ours("All units at once take more than all outputs together give: they are moved one after the other, or in groups that the panel can feed.")
            .Marked(!type.IsChecked(PanelTypeFacts.TotalCurrent)
                || landed.Exists(r => drawn.Any(f => Drawn(r, f) is not null && !r.Unit.Kind!.IsChecked(f)))));
    }

    /// <summary>What the electrician needs of the mains side; what nobody noted is a blank for the electrician to fill.</summary>
    private static void Mains(MarkdownWriter to, Panel panel) => to.Facts("Mains side", "Entry",
        ("Type", panel.EntryOrBlank(PanelFacts.Type)),
        ("Hangs", panel.EntryOrBlank(PanelFacts.Location)),
        ("Board", panel.EntryOrBlank(PanelFacts.Board)),
        ("Breaker", panel.EntryOrBlank(PanelFacts.Breaker)),
        ("Breaker rating", panel.EntryOrBlank(PanelFacts.BreakerRating)),
        ("All else on that breaker", panel.EntryOrBlank(PanelFacts.ElseOnBreaker)),
        ("Input volts, by its plate", OfPlate(panel, PanelTypeFacts.InputVolts)),
        ("Input current at the most, by its plate", OfPlate(panel, PanelTypeFacts.InputCurrent)));

    private static Inline OfPlate(Panel panel, Fact fact) => panel.Type?.Shown(fact) is null ? Blank : panel.Type.EntryOfSheet(fact);

    private static void Outputs(MarkdownWriter to, Panel panel, List<HomeRun> landed, HashSet<string> doubtful)
    {
        var house = panel.House;
        to.Table(["Output", "Unit", "Room", "Cable", "Gauge", "One way"], landed.Select(r => Row(
            OpenStops.Stopped(PanelMap.OutputOf(r), doubtful.Contains(r.Id)), r.Name, (r.Unit.Window.Room?.FullName).OrDash(), r.Entry(RunFacts.Cable),
            r.Cable.EntryOfSheet(CableTypeFacts.Conductor),
            r.OneWay is { } oneWay ? Figure(oneWay.ShowRounded(house.DisplayUnits, LengthScale.Run)) : Dash)), "Nothing is landed on it.");
        if (panel.NotWanted.ToList() is { Count: > 0 } notWanted)
        {
            var live = notWanted.Select(n => (Inline?)Join(": ", [Number(n.Output), NameOf(house, n.Run)])).JoinOrDash();
            to.Say(Ours($"Landed and not wanted, and so live: {live}."));
        }
        var remotes = Remotes(house, landed);
        if (landed.Count > 0)
            to.Table(["Output", "Unit", "Moves together as", "Running current", "Starting current", "Volts at the unit, at its running current",
                "Volts at the unit, at its starting current"], landed.Select(r => Row(
                r.Entry(RunFacts.Output), r.Name, TogetherAs(r.Unit, [.. remotes[r.Unit.Id]]), r.Unit.Kind.EntryOfSheet(CoveringKindFacts.RunningCurrent),
                r.Unit.Kind.EntryOfSheet(CoveringKindFacts.StartingCurrent), r.BySheet(x => Volts(Expected.WhileRunning(x))),
                r.BySheet(x => Volts(Expected.WhileStarting(x))))));
    }

    private static void SignOff(MarkdownWriter to, PaperData data) =>
        to.Table(["Panel", "Electrician, name", "License", "Connected on", "Signature"], data.House.Panels.Select(p => Row(
            p.Name, p.EntryOrBlank(PanelFacts.ConnectedBy), p.EntryOrBlank(PanelFacts.Licence), p.EntryOrBlank(PanelFacts.ConnectedOn), Blank)),
            "There is no panel in this house.");

    /// <summary>The largest load that one press moves: a group, all that a remote moves, or a preset, the same one that the checks go by.</summary>
    private static Inline LargestGroup(Panel panel, List<HomeRun> landed)
    {
        var units = landed.ConvertAll(r => r.Unit);
        if (Load.Together(units).Where(l => l.Units > 1).ToList() is not { Count: > 0 } loads)
            return Ours("no groups");
        var largest = loads.MaxBy(l => (l.Peak.Amperes, l.Units));
        var peak = Figure(largest.Peak.ToString()).Marked(units.Exists(u => Load.Of(u) is not null
            && !(u.Kind!.IsChecked(CoveringKindFacts.StartingCurrent) && u.Kind.IsChecked(CoveringKindFacts.RunningCurrent))));
        return Ours($"{Said(largest.Name, panel.House)}: {(units.Exists(u => Load.Of(u) is null) ? Ours($"at least {peak}") : peak)}");
    }

    /// <summary>What moves units of a panel together besides their group: remotes, by unit.</summary>
    private static ILookup<string, string> Remotes(House house, List<HomeRun> landed)
    {
        var here = landed.Select(r => r.Unit.Id).ToHashSet();
        return (from remote in house.Remotes
                let units = remote.Units.Where(u => here.Contains(u.Id)).ToList()
                where units.Count > 1
                from unit in units
                select (unit.Id, remote.Name)).ToLookup(m => m.Id, m => m.Name);
    }

    private static Inline TogetherAs(Unit unit, List<string> by) => unit.Shown(UnitFacts.Group) is null ? by.JoinOrDash()
        : by.Count == 0 ? unit.Entry(UnitFacts.Group) : Join(", ", [unit.Entry(UnitFacts.Group), by.JoinOrDash()]);

    /// <summary>The starting currents together.</summary>
    internal static Inline StartingTogether(IEnumerable<HomeRun> runs) => Sum(runs, CoveringKindFacts.StartingCurrent);

    /// <summary>The currents together; where one is not known the sum says so, for it is no sum then.</summary>
    private static Inline Sum(IEnumerable<HomeRun> runs, Fact<Current> drawn)
    {
        var all = runs.ToList();
        var known = new Current(all.Sum(r => Drawn(r, drawn)?.Amperes ?? 0));
        var unknown = all.Count(r => Drawn(r, drawn) is null);
        var sum = Figure(known.ToString()).Marked(all.Exists(r => Drawn(r, drawn) is not null && !r.Unit.Kind!.IsChecked(drawn)));
        return unknown switch
        {
            0 => sum,
            1 => Ours($"{sum}, and 1 unit whose current is not known"),
            _ => Ours($"{sum}, and {unknown} units whose current is not known"),
        };
    }

    private static Inline Volts(Voltage? volts) => (volts?.ToString()).FigureOrDash();

    private static Current? Drawn(HomeRun run, Fact<Current> drawn) => run.Unit.Kind?.Item.Get(drawn);
}
