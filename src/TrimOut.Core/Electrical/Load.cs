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
    public static Current? Of(Unit unit) =>
        unit.Kind is { RunningCurrent: { } running, StartingCurrent: { } starting } ? (running >= starting ? running : starting) : null;

    /// <summary>Every set of units that moves together: units of one group, units that a preset sends somewhere, and each unit alone.</summary>
    /// <param name="units">The units that are asked about; others are left out.</param>
    private static IEnumerable<(string Name, IEnumerable<Unit> Units)> Together(IReadOnlyList<Unit> units)
    {
        if (units.Count == 0)
            yield break;
        foreach (var group in units.Where(u => u.Item.Get(UnitFacts.Group) is not null)
            .GroupBy(u => u.Item.Get(UnitFacts.Group)!, StringComparer.OrdinalIgnoreCase))
            yield return ($"group {group.Key}", group);
        var asked = units.Select(u => u.Id).ToHashSet();
        foreach (var remote in units[0].House.Remotes)
        {
            foreach (var preset in remote.Presets)
                yield return ($"preset {preset.Name} of {remote.Name}", preset.Positions.Select(p => p.Unit).Where(u => asked.Contains(u.Id)));
        }
        foreach (var unit in units)
            yield return (unit.Tag, [unit]);
    }

    /// <summary>The load of every set on every place that feeds some of it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="placeOf">The place that feeds a run; null where none does yet.</param>
    public static IEnumerable<(T Place, Load Load)> On<T>(House house, Func<HomeRun, T?> placeOf)
        where T : struct
    {
        var fed = new Dictionary<T, Load>();
        var placed = house.Units.Where(u => u.Run is not null).Select(u => (Unit: u, Place: placeOf(u.Run!))).Where(u => u.Place is not null).ToList();
        var fedBy = placed.ToDictionary(u => u.Unit, u => u.Place!.Value);
        foreach (var (name, units) in Together([.. placed.Select(p => p.Unit)]))
        {
            foreach (var unit in units)
            {
                var place = fedBy[unit];
                var so = fed.GetValueOrDefault(place);
                fed[place] = new Load(name, so.Units + 1, so.Peak + (Of(unit) ?? new Current(0)));
            }
            foreach (var (place, load) in fed)
                yield return (place, load);
            fed.Clear();
        }
    }

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
