using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>What units draw when they move together.</summary>
/// <param name="Name">What moves them together: a group, a preset, or one unit alone.</param>
/// <param name="Units">How many move.</param>
/// <param name="Peak">The sum of their larger currents, starting or running.</param>
public readonly record struct Load(string Name, int Units, Current Peak)
{
    /// <summary>What one unit draws at the most; null while a current is not known.</summary>
    public static Current? Of(Unit unit) => unit.Kind is { RunningCurrent: { } running, StartingCurrent: { } starting } ? (running >= starting ? running : starting) : null;

    /// <summary>Every set of units that moves together: units of one group, units that a preset sends somewhere, and each unit alone.</summary>
    public static IEnumerable<(string Name, IReadOnlyList<Unit> Units)> Together(House house) =>
        house.Units.Where(u => u.Item.Get(UnitFacts.Group) is not null).GroupBy(u => u.Item.Get(UnitFacts.Group)!, StringComparer.OrdinalIgnoreCase).Select(g => ($"group {g.Key}", (IReadOnlyList<Unit>)[.. g]))
            .Concat(house.Remotes.SelectMany(r => r.Presets.Select(p => ($"preset {p.Name} of {r.Name}", (IReadOnlyList<Unit>)[.. p.Positions.Select(m => m.Unit)]))))
            .Concat(house.Units.Select(u => (u.Tag, (IReadOnlyList<Unit>)[u])));

    /// <summary>The load of every set on every place that feeds some of it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="placeOf">The place that feeds a run; null where none does yet.</param>
    public static IEnumerable<(T Place, Load Load)> On<T>(House house, Func<HomeRun, T?> placeOf)
        where T : struct =>
        from set in Together(house)
        from place in set.Units.Where(u => u.Run is not null).Select(u => (Unit: u, Place: placeOf(u.Run!))).Where(u => u.Place is not null).GroupBy(u => u.Place!.Value, u => u.Unit)
        select (place.Key, new Load(set.Name, place.Count(), place.Aggregate(new Current(0), (sum, u) => sum + (Of(u) ?? new Current(0)))));

    /// <summary>The largest load of each panel by its id.</summary>
    public static Dictionary<string, Load> OfPanels(House house) => Largest(On<ItemRef>(house, PanelOf)).ToDictionary(p => p.Key.Id, p => p.Value);

    /// <summary>The largest load of some outputs, by panel's id and number.</summary>
    /// <param name="house">The house.</param>
    /// <param name="outputs">The output that feeds each run, by the run's id; what is not in it is left out.</param>
    public static Dictionary<(string Panel, int Output), Load> OfOutputs(House house, IReadOnlyDictionary<string, (string Panel, int Output)> outputs) =>
        Largest(On<(string Panel, int Output)>(house, r => outputs.TryGetValue(r.Id, out var at) ? at : null));

    /// <summary>The panel that feeds a run: its own, or that of the run it branches off.</summary>
    public static ItemRef? PanelOf(HomeRun run) => Trunk(run).Item.Get(RunFacts.Panel);

    /// <summary>The output that feeds a run: its own, or that of the run it branches off; null until it is landed.</summary>
    public static (string Panel, int Output)? OutputOf(HomeRun run) =>
        Trunk(run) is { Output: { } output, Panel: { } panel } ? (panel.Id, output) : null;

    private static HomeRun Trunk(HomeRun run)
    {
        // Two laptops can each say that one run branches off the other; a way that long goes in a circle.
        for (var steps = 0; steps < 64 && run.BranchesOff is { } before; steps++)
            run = before;
        return run;
    }

    private static Dictionary<T, Load> Largest<T>(IEnumerable<(T Place, Load Load)> loads)
        where T : struct
    {
        var peaks = new Dictionary<T, Load>();
        foreach (var (place, load) in loads)
        {
            if (!peaks.TryGetValue(place, out var most) || load.Peak > most.Peak)
                peaks[place] = load;
        }
        return peaks;
    }
}
