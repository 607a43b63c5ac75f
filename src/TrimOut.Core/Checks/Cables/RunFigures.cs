using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>What a run's length was reckoned from.</summary>
internal enum Reckoned
{
    /// <summary>Legs and both tails as they are.</summary>
    Measured,

    /// <summary>What is there already.</summary>
    AtLeast,

    /// <summary>Legs, and tails as they are planned.</summary>
    Planned,
}

/// <summary>What the checks of a run's length share.</summary>
internal static class RunFigures
{
    public static readonly Message OpenLoop = new("A conductor is cut, or the far end is not shorted.");
    private static readonly Message NotInTable = new("Conductor: {0} is not in the table. Known are {1} mm2.");
    private static readonly Message LegsWithLengths = new("legs with their lengths");
    private static readonly Message TableGoverns = new("The kit's table ends at {0}, voltage drop at {1}: the table governs.");
    private static readonly Message VoltageGoverns = new("The kit's table ends at {0}, voltage drop at {1}: the voltage governs.");
    private static readonly Message NoTable = new("The kit's table gives no length; voltage drop ends it at {0}.");
    private static readonly Message ThickerCable = new("Pull a thicker cable or take a shorter way, while the wall is open; or set a panel nearer to it.");
    private static readonly Message NearerPanel = new("Land it on a panel nearer to it, or ask the maker for a unit that needs less.");

    /// <summary>Whether it goes on from another unit's cable: then its own length and current say nothing, and the shared cable is judged as a whole.</summary>
    public static bool OnSharedCable(HomeRun run) => run.BranchesOff is not null;

    /// <summary>Which fact is missing before voltage can be worked out; null when none is.</summary>
    public static Outcome.NotChecked? UnknownLimits(HomeRun run)
    {
        if (run.Limits is not null)
            return null;
        var unit = run.Unit;
        if (unit.Kind is not { } kind)
            return NotChecked.Of(unit, UnitFacts.Kind);
        if (kind.LeastVolts is null)
            return NotChecked.Of(kind, CoveringKindFacts.LeastVolts);
        if (kind.RunningCurrent is null)
            return NotChecked.Of(kind, CoveringKindFacts.RunningCurrent);
        if (kind.StartingCurrent is null)
            return NotChecked.Of(kind, CoveringKindFacts.StartingCurrent);
        if (run.Cable is not { } cable)
            return NotChecked.Of(run, RunFacts.Cable);
        if (cable.Conductor is not { } size)
            return NotChecked.Of(cable, CableTypeFacts.Conductor);
        if (cable.Stranding is not { } made)
            return NotChecked.Of(cable, CableTypeFacts.Stranding);
        if (run.House.Job.Get(HouseFacts.ConductorTemperature) is not { } at)
            return NotChecked.Of(new JobItself(run.House), HouseFacts.ConductorTemperature);
        if (!Conductors.OhmsPerMetre(size, made, at).Ok)
        {
            var known = Arg.All(Conductors.MetricSizes.Select(s => Arg.Number(s)));
            return new Outcome.NotChecked(NotInTable.With(Arg.Value(CableTypeFacts.Conductor, size), known), FieldRef.To(cable.Item, CableTypeFacts.Conductor));
        }
        return run.Panel is { Type: { } type } ? NotChecked.Of(type, PanelTypeFacts.Supply)
            : run.Panel is { } panel ? NotChecked.Of(panel, PanelFacts.Type)
            : run.House.ItemsOf(ItemKind.Panel).Any() ? NotChecked.Of(run, RunFacts.Panel)
            : run.House.ItemsOf(ItemKind.PanelType).FirstOrDefault(t => t.Get(PanelTypeFacts.Supply) is null) is { } blank
            ? NotChecked.Of(new PanelType(run.House, blank), PanelTypeFacts.Supply)
            : NotChecked.Of(run, RunFacts.Panel);
    }

    /// <summary>Which part of the run's length is missing; null when none is.</summary>
    public static Outcome.NotChecked? UnknownLength(HomeRun run) =>
        run.OneWay is not null ? null
        : run.Legs.FirstOrDefault(l => l.Length is null) is { } leg ? NotChecked.Of(leg, LegFacts.Length)
        : run.Legs.IsEmpty ? new Outcome.NotChecked(LegsWithLengths)
        : run.TailAtWindow is null ? NotChecked.Of(run, RunFacts.TailAtWindow)
        : NotChecked.Of(run, RunFacts.TailAtPanel);

    /// <summary>
    /// The length that a run is judged by: as measured; while a part is missing, what is there already or what is planned where that breaks a limit; null
    /// where nothing can be said.
    /// </summary>
    public static (Length Length, Reckoned From)? Reckoned(HomeRun run, Func<Length, bool> breaks) =>
        run.OneWay is { } measured ? (measured, Cables.Reckoned.Measured)
        : run.AtLeast is { } there && breaks(there) ? (there, Cables.Reckoned.AtLeast)
        : run.Planned is { } planned && breaks(planned) ? (planned, Cables.Reckoned.Planned)
        : null;

    /// <summary>Both limits in words, the tighter one named.</summary>
    public static Sentence BothLimits(RunLimits limits) => limits.Table is { } table
        ? (limits.TableGoverns ? TableGoverns : VoltageGoverns).With(Arg.Limit(table), Arg.Limit(limits.ByVolts))
        : NoTable.With(Arg.Limit(limits.ByVolts));

    /// <summary>The cheapest way to a run that is not too long for its cable.</summary>
    public static Sentence Mend(HomeRun run) => Moment.WallOpen(run.Unit) ? ThickerCable : NearerPanel;
}
