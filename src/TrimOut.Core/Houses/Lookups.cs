using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>The lookups there are.</summary>
internal static class Lookups
{
    /// <summary>The window of each unit that is to be hung, in walking order.</summary>
    public static Lookup<string> Units { get; } = new(0, h => h.WindowIds,
        (h, id) => h.FindWindow(id) is { LeftOut: false } w ? w.Units.Select(u => ((string?)u.Id, w.Id)) : [], neighbors: true);

    /// <summary>The run of each unit that has one, in the order of the units.</summary>
    public static Lookup<string> Runs { get; } = new(1, h => h.State.Of(Units).Keys, (h, id) => h.FindUnit(id)!.Run is { } run ? [(id, run.Id)] : []);

    /// <summary>The units whose runs land on each panel.</summary>
    public static Lookup<string> UnitsByPanel { get; } = OfRuns(2, r => [r.Item.Get(RunFacts.Panel)?.Id]);

    /// <summary>The units paired with each hub.</summary>
    public static Lookup<string> UnitsByHub { get; } = OfUnits(3, u => [u.Item.Get(UnitFacts.Hub)?.Id]);

    /// <summary>The remotes that count at each hub.</summary>
    public static Lookup<string> RemotesByHub { get; } = OfRemotes(4, r => [(r.Item.Get(RemoteFacts.Hub)?.Id, r.Id)]);

    /// <summary>The remotes that move each unit.</summary>
    public static Lookup<string> RemotesByUnit { get; } =
        OfRemotes(5, r => r.Item.All(RemoteFacts.Moves).Where(m => m.Value == YesNo.Yes).Select(m => ((string?)m.Key, r.Id)));

    /// <summary>The windows with each tag, whatever its case.</summary>
    public static Lookup<string> WindowsByTag { get; } = new(6, h => h.WindowIds, (h, id) => [(h.FindWindow(id)!.Tag, id)], anyCase: true);

    /// <summary>The windows in each room.</summary>
    public static Lookup<string> WindowsByRoom { get; } = new(7, h => h.WindowIds, (h, id) => [(h.FindWindow(id)!.RoomId, id)]);

    /// <summary>The units with each name at the hub, whatever its case.</summary>
    public static Lookup<string> UnitsByHubName { get; } = OfUnits(8, u => [u.Item.Get(UnitFacts.HubName)], anyCase: true);

    /// <summary>The units whose runs carry each label at either end, whatever its case.</summary>
    public static Lookup<string> UnitsByLabel { get; } = OfRuns(9, r => r.Labels, anyCase: true);

    /// <summary>Who uses each part of the kit: units, panels, hubs and remotes.</summary>
    public static Lookup<string> UsersOfPart { get; } = new(10,
        h => [.. h.State.Of(Units).Keys, .. new[] { ItemKind.Panel, ItemKind.Hub, ItemKind.Remote }.SelectMany(h.ItemsOf).Select(i => i.Id)],
        (h, id) => PartsOf(h, id).Select(p => (p?.Id, id)));

    /// <summary>What each run of a cable takes off a box; null where that is not known yet.</summary>
    public static Lookup<(string Unit, Length? Needed)> NeedsOfCable { get; } = new(11, h => h.State.Of(Runs).Keys,
        (h, id) => h.FindUnit(id)!.Run is { } run ? [(run.Item.Get(RunFacts.Cable)?.Id, (id, run.Needed))] : []);

    /// <summary>The units that each panel feeds, also over the run of another unit; the only panel there is, those that are to be landed too.</summary>
    public static Lookup<string> UnitsFedByPanel { get; } = OfRuns(12, r => [Load.PanelOf(r)?.Id]);

    /// <summary>The units that each output feeds, under <see cref="Load.OutputKey"/>.</summary>
    public static Lookup<string> UnitsByOutput { get; } = OfRuns(13, r => [Load.OutputOf(r) is { } output ? Load.OutputKey(output) : null]);

    /// <summary>The presets that send each unit somewhere.</summary>
    public static Lookup<string> PresetsByUnit { get; } =
        OfRemotes(14, r => r.Presets.SelectMany(p => p.Item.All(PresetFacts.Position).Select(at => ((string?)at.Key, p.Id))));

    /// <summary>The units whose names at the hub share a sketch: names that are alike share one.</summary>
    public static Lookup<string> UnitsByNameSketch { get; } = OfUnits(15, u => u.Item.Get(UnitFacts.HubName) is { } name ? PlainName.Of(name).Sketches : []);

    /// <summary>
    /// The units whose runs lie on each output, under <see cref="Load.OutputKey"/>, whatever is said of them: a cable that was landed is there, also where
    /// its window was left out or its unit is to have a battery.
    /// </summary>
    public static Lookup<string> LandedAtOutput { get; } = new(16, h => h.WindowIds, (h, id) => h.FindWindow(id)!.Units
        .Where(u => u.CableThatIsThere is not null).Select(u => (u.CableThatIsThere is { } run
            && run.Get(RunFacts.Panel) is { } panel && run.Get(RunFacts.Output) is { } output ? Load.OutputKey((panel.Id, output)) : null, u.Id)));

    /// <summary>The units whose runs go through a floor, under <see cref="HomeRun.WayToPanel"/>.</summary>
    public static Lookup<string> UnitsThroughFloor { get; } =
        OfRuns(17, r => [r.Legs.Any(l => l.Direction == LegDirection.ThroughFloor) ? r.WayToPanel : null], anyCase: true);

    /// <summary>The panels, hubs and remotes of each name, whatever its case, under <see cref="NameKey"/>.</summary>
    public static Lookup<string> ByName { get; } = new(18,
        h => new[] { ItemKind.Panel, ItemKind.Hub, ItemKind.Remote }.SelectMany(h.ItemsOf).Select(i => i.Id),
        (h, id) => h.Find(id)! is var item && item.Get((Fact<string>)FactTable.Find(item.Kind, PanelFacts.Name.Name)!) is { } name
            ? [(NameKey(item.Kind, name), id)] : [], anyCase: true);

    /// <summary>The panels that each number of a breaker feeds, on whatever board, whatever its case.</summary>
    public static Lookup<string> PanelsByBreaker { get; } = OfPanels(19, p => p.Get(PanelFacts.Breaker));

    /// <summary>The panels that were connected to mains by each name, whatever its case.</summary>
    public static Lookup<string> PanelsByElectrician { get; } = OfPanels(20, p => p.Evidence(PanelFacts.ConnectedBy));

    /// <summary>The change that wrote the last finished measure of each window, all under one key.</summary>
    public static Lookup<(string Window, long Stamp, ChangeId Id)> LastMeasures { get; } = new(21, h => h.WindowIds,
        (h, id) => MeasuresIncomplete.LastOf(h.FindWindow(id)!) is { } last ? [("", (id, last.Stamp, last.Id))] : []);

    /// <summary>The units in each fabric and color, whatever their case.</summary>
    public static Lookup<string> UnitsByCloth { get; } = OfUnits(22, u => [UnitsUnlike.Cloth(u)], anyCase: true);

    /// <summary>The units that each remote moves, in walking order.</summary>
    public static Lookup<string> UnitsByRemote { get; } = OfUnits(23, u => u.House.State.Of(RemotesByUnit)[u.Id]);

    /// <summary>The units that each preset sends somewhere, in walking order.</summary>
    public static Lookup<string> UnitsByPreset { get; } = OfUnits(24, u => u.House.State.Of(PresetsByUnit)[u.Id]);

    /// <summary>The windows that get a covering, each under itself, in walking order.</summary>
    public static Lookup<string> CoveredWindows { get; } = new(25, h => h.WindowIds, (h, id) => h.FindWindow(id)!.LeftOut ? [] : [(id, id)]);

    /// <summary>The key of a name among things of one kind.</summary>
    public static string NameKey(ItemKind kind, string name) => $"{kind} {name}";

    private static Lookup<string> OfPanels(int number, Func<Item, string?> key) =>
        new(number, h => h.ItemsOf(ItemKind.Panel).Select(i => i.Id), (h, id) => [(key(h.Find(id)!), id)], anyCase: true);

    private static Lookup<string> OfUnits(int number, Func<Unit, IEnumerable<string?>> keys, bool anyCase = false) =>
        new(number, h => h.State.Of(Units).Keys, (h, id) => keys(h.FindUnit(id)!).Select(k => (k, id)), anyCase);

    private static Lookup<string> OfRuns(int number, Func<HomeRun, IEnumerable<string?>> keys, bool anyCase = false) =>
        new(number, h => h.State.Of(Runs).Keys, (h, id) => h.FindUnit(id)!.Run is { } run ? keys(run).Select(k => (k, id)) : [], anyCase);

    private static Lookup<string> OfRemotes(int number, Func<Remote, IEnumerable<(string? Key, string Value)>> pairs) =>
        new(number, h => h.ItemsOf(ItemKind.Remote).Select(i => i.Id), (h, id) => pairs(h.FindRemote(id)!));

    private static IEnumerable<ItemRef?> PartsOf(House house, string id) => house.FindUnit(id) is { } unit
        ? [unit.Item.Get(UnitFacts.Kind), unit.Item.Get(UnitFacts.HeadCover), unit.Run?.Item.Get(RunFacts.Cable)]
        : house.Find(id) is { } item ? [item.Get(PanelFacts.Type) ?? item.Get(HubFacts.Type) ?? item.Get(RemoteFacts.Type)] : [];
}
