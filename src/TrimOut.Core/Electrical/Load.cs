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

    /// <summary>The largest load of each panel by its id.</summary>
    public static Dictionary<string, Load> OfPanels(House house)
    {
        var peaks = new Dictionary<string, Load>();
        foreach (var (name, units) in Together(house))
        {
            foreach (var panel in units.Where(u => u.Run?.Item.Get(RunFacts.Panel) is not null).GroupBy(u => u.Run!.Item.Get(RunFacts.Panel)!.Value.Id))
            {
                var load = new Load(name, panel.Count(), panel.Aggregate(new Current(0), (sum, u) => sum + (Of(u) ?? new Current(0))));
                if (!peaks.TryGetValue(panel.Key, out var most) || load.Peak > most.Peak)
                    peaks[panel.Key] = load;
            }
        }
        return peaks;
    }
}
