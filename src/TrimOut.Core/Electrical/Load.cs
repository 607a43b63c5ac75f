using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Electrical;

/// <summary>What units draw when they move together.</summary>
/// <param name="Name">What moves them together: a group, a preset, or one unit alone.</param>
/// <param name="Units">How many move.</param>
/// <param name="Peak">The sum of their larger currents, starting or running.</param>
public readonly record struct Load(Arg Name, int Units, Current Peak)
{
    private static readonly Message OfGroup = new("group {0}");
    private static readonly Message OfPreset = new("preset {0} of {1}");
    private static readonly Message OfRemote = new("all that {0} moves");
    private static readonly Message OfPresets = new("preset {0} of several remotes");
    private static readonly Message AtATime = new("presets that run at {0}");

    /// <summary>What one unit draws at the most; null while a current is not known.</summary>
    public static Current? Of(Unit unit) => unit.Kind is { RunningCurrent: { } running, StartingCurrent: { } starting }
        ? (running >= starting ? running : starting) : null;

    /// <summary>
    /// The load of every set of units that one press moves: units of one group, all that a remote moves, units that a preset sends somewhere, those of
    /// one name on several remotes, for a scene or a voice calls them all, those that a clock starts at one minute of one month, and each unit alone.
    /// </summary>
    /// <param name="units">The units that are asked about, such as those on one panel; others are left out.</param>
    public static IEnumerable<Load> Together(IReadOnlyList<Unit> units)
    {
        foreach (var group in units.Where(u => u.Item.Get(UnitFacts.Group) is not null)
            .GroupBy(u => u.Item.Get(UnitFacts.Group)!, SameName.Comparer))
            yield return Sum(OfGroup.With(Named(group.Key)), group);
        var house = units.Count > 0 ? units[0].House : House.Empty;
        foreach (var remote in units.SelectMany(u => house.Look(Lookups.RemotesByUnit, u.Id).Select(r => (Remote: house.Find(r)!, Unit: u)))
            .GroupBy(p => p.Remote, p => p.Unit).OrderBy(g => g.Key.Place))
            yield return Sum(OfRemote.With(Arg.Name(remote.Key)), remote);
        var byPreset = units.SelectMany(u => house.Look(Lookups.PresetsByUnit, u.Id).Select(p => (Preset: house.Find(p)!, Unit: u)))
            .GroupBy(p => p.Preset, p => p.Unit).ToList();
        foreach (var preset in byPreset.Select(g => (Item: g.Key, Remote: house.Find(g.Key.Under)!, Units: g)).OrderBy(p => p.Remote.Place)
            .ThenBy(p => p.Item.Place))
            yield return Sum(OfPreset.With(Arg.Name(preset.Item), Arg.Name(preset.Remote)), preset.Units);
        foreach (var presets in byPreset.Where(g => g.Key.Get(PresetFacts.Name) is not null)
            .GroupBy(g => g.Key.Get(PresetFacts.Name)!, SameName.Comparer).Where(g => g.Select(p => p.Key.Under).Distinct().Count() > 1))
            yield return Sum(OfPresets.With(Named(presets.Key)), presets.SelectMany(p => p).DistinctBy(u => u.Id));
        // Those of one minute start together in the months that they have in common: the month counts in which most do.
        foreach (var presets in byPreset.Where(g => g.Key.Get(PresetFacts.RunsAt) is not null).GroupBy(g => g.Key.Get(PresetFacts.RunsAt)!.Value)
            .Where(g => g.Count() > 1).OrderBy(g => g.Key))
        {
            yield return presets.SelectMany(g => new Preset(house, g.Key).RunsIn, (g, month) => (month, g)).GroupBy(p => p.month, p => p.g)
                .Select(m => Sum(AtATime.With(Arg.Value(PresetFacts.RunsAt, presets.Key)), m.SelectMany(p => p).DistinctBy(u => u.Id)))
                .MaxBy(l => (l.Peak.Amperes, l.Units));
        }
        foreach (var unit in units)
            yield return Sum(Arg.Name(unit), [unit]);
    }

    /// <summary>The largest of these loads; null where there are no units.</summary>
    public static Load? Largest(IReadOnlyList<Unit> units)
    {
        Load? most = null;
        foreach (var load in Together(units))
        {
            // Of equal ones that with the most units, whatever the order of the walk is.
            if (most is null || load.Peak > most.Value.Peak || (load.Peak == most.Value.Peak && load.Units > most.Value.Units))
                most = load;
        }
        return most;
    }

    /// <summary>The name of the largest load of units, which stands for those of all loads past a limit: another one past it is another figure.</summary>
    /// <param name="units">The units.</param>
    /// <param name="most">The limit.</param>
    /// <param name="largest">The largest of their loads.</param>
    public static Arg NamesPast(IReadOnlyList<Unit> units, Current most, Load largest) =>
        Arg.Of(Together(units).Where(l => l.Peak > most).Select(l => l.Name), largest.Name);

    /// <summary>An output in one word, to look up what it feeds.</summary>
    public static string OutputKey((string Panel, int Output) place) => string.Create(CultureInfo.InvariantCulture, $"{place.Panel}/{place.Output}");

    /// <summary>The panel that feeds a run, or is to feed it: its own, or that of the run it branches off; until it is landed the only one there is.</summary>
    public static ItemRef? PanelOf(HomeRun run) => Trunk(run).Item.Get(RunFacts.Panel)
        ?? (run.House.ItemsOf(ItemKind.Panel).Take(2).ToList() is [var only] ? new ItemRef(only.Id) : null);

    /// <summary>The output that feeds a run: its own, or that of the run it branches off; null until it is landed.</summary>
    public static (string Panel, int Output)? OutputOf(HomeRun run) =>
        Trunk(run) is { Output: { } output, Panel: { } panel } ? (panel.Id, output) : null;

    /// <summary>A name as the first unit has it, whatever its case in others.</summary>
    private static Arg Named(string typed) => Arg.Of([Arg.Typed(ShownText.Key(typed).ToUpperInvariant())], Arg.Typed(typed));

    private static HomeRun Trunk(HomeRun run)
    {
        // Two laptops can each say that one run branches off the other; a way that long goes in a circle.
        for (var steps = 0; steps < 64 && run.BranchesOff is { } before; steps++)
            run = before;
        return run;
    }

    private static Load Sum(Arg name, IEnumerable<Unit> units) =>
        units.Aggregate(new Load(name, 0, new Current(0)), (sum, u) => new Load(name, sum.Units + 1, sum.Peak + (Of(u) ?? new Current(0))));
}
