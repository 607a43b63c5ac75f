using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Houses;

/// <summary>Who points at whom: for each key the items under it. Made once for a state of a house, when it is first asked for.</summary>
/// <remarks>
/// What making it read is recorded source by source, and so is each look into it, under its key: when a value that it was made of
/// changes, only that source is read again, and only whoever looked under a key that holds something else now is worked out again.
/// </remarks>
internal sealed class Lookup
{
    private Lookup(int number, Func<House, IEnumerable<string>> sources, Func<House, string, IEnumerable<(string? Key, string Value)>> pairs, bool anyCase = false)
    {
        (Number, AnyCase) = (number, anyCase);
        Map = new(sources, (house, id) => [.. pairs(house, id).Where(p => p.Key is not null).Select(p => (p.Key!, p.Value))]);
    }

    /// <summary>The window of each unit that is to be hung, in walking order.</summary>
    public static Lookup Units { get; } = new(0, h => h.Windows.Select(w => w.Id), (h, id) => h.FindWindow(id) is { LeftOut: false } w ? w.Units.Select(u => ((string?)u.Id, w.Id)) : []);

    /// <summary>The run of each unit that has one, in the order of the units.</summary>
    public static Lookup Runs { get; } = new(1, h => h.State.Of(Units).Keys, (h, id) => h.FindUnit(id)!.Run is { } run ? [(id, run.Id)] : []);

    /// <summary>The units whose runs land on each panel.</summary>
    public static Lookup UnitsByPanel { get; } = OfRuns(2, r => [r.Item.Get(RunFacts.Panel)?.Id]);

    /// <summary>The units paired with each hub.</summary>
    public static Lookup UnitsByHub { get; } = OfUnits(3, u => u.Item.Get(UnitFacts.Hub)?.Id);

    /// <summary>The remotes that count at each hub.</summary>
    public static Lookup RemotesByHub { get; } = OfRemotes(4, r => [r.Item.Get(RemoteFacts.Hub)?.Id]);

    /// <summary>The remotes that move each unit.</summary>
    public static Lookup RemotesByUnit { get; } = OfRemotes(5, r => r.Item.All(RemoteFacts.Moves).Where(m => m.Value == YesNo.Yes).Select(m => m.Key));

    /// <summary>The windows with each tag, whatever its case.</summary>
    public static Lookup WindowsByTag { get; } = new(6, h => h.Windows.Select(w => w.Id), (h, id) => [(h.FindWindow(id)!.Tag, id)], anyCase: true);

    /// <summary>The windows in each room.</summary>
    public static Lookup WindowsByRoom { get; } = new(7, h => h.Windows.Select(w => w.Id), (h, id) => [(h.FindWindow(id)!.RoomId, id)]);

    /// <summary>The units with each name at the hub, whatever its case.</summary>
    public static Lookup UnitsByHubName { get; } = OfUnits(8, u => u.Item.Get(UnitFacts.HubName), anyCase: true);

    /// <summary>The units whose runs carry each label at either end, whatever its case.</summary>
    public static Lookup UnitsByLabel { get; } =
        OfRuns(9, r => new[] { r.LabelAtWindow, r.LabelAtPanel }.OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase), anyCase: true);

    /// <summary>The units whose runs branch off each run.</summary>
    public static Lookup UnitsByTrunk { get; } = OfRuns(10, r => [r.BranchesOff?.Id]);

    /// <summary>All of them, each after those that it is made of.</summary>
    public static ImmutableArray<Lookup> All { get; } =
        [Units, Runs, UnitsByPanel, UnitsByHub, RemotesByHub, RemotesByUnit, WindowsByTag, WindowsByRoom, UnitsByHubName, UnitsByLabel, UnitsByTrunk];

    /// <summary>Its number among them, by which it is known in keys of reads.</summary>
    public int Number { get; }

    /// <summary>Whether keys that differ only in case are one key.</summary>
    public bool AnyCase { get; }

    /// <summary>What each of its sources puts into it.</summary>
    public Map<(string Key, string Value)[]> Map { get; }

    /// <summary>The key as it is recorded.</summary>
    public ReadKey KeyOf(string key) => ReadKey.Of(this, AnyCase ? key.ToUpperInvariant() : key);

    private static Lookup OfUnits(int number, Func<Unit, string?> key, bool anyCase = false) =>
        new(number, h => h.State.Of(Units).Keys, (h, id) => [(key(h.FindUnit(id)!), id)], anyCase);

    private static Lookup OfRuns(int number, Func<HomeRun, IEnumerable<string?>> keys, bool anyCase = false) =>
        new(number, h => h.State.Of(Runs).Keys, (h, id) => keys(h.FindUnit(id)!.Run!).Select(k => (k, id)), anyCase);

    private static Lookup OfRemotes(int number, Func<Remote, IEnumerable<string?>> keys) =>
        new(number, h => h.ItemsOf(ItemKind.Remote).Select(i => i.Id), (h, id) => keys(h.FindRemote(id)!).Select(k => (k, id)));
}
