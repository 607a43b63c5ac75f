using System.Collections.Immutable;
using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>Who points at whom: for each key the items under it. Made once for a state of a house, when it is first asked for.</summary>
/// <remarks>
/// What making it read is recorded, and so is each look into it, under its key: when a value that it was made of changes, it is made
/// again, and only whoever looked under a key that holds something else now is worked out again.
/// </remarks>
internal sealed class Lookup
{
    private static readonly StringComparer Exact = StringComparer.Ordinal;

    private readonly Func<House, IEnumerable<(string? Key, string Value)>> _make;
    private readonly StringComparer _keys;

    private Lookup(int number, Func<House, IEnumerable<(string? Key, string Value)>> make, StringComparer? keys = null) => (Number, _make, _keys) = (number, make, keys ?? Exact);

    /// <summary>The window of each unit that is to be hung, in walking order.</summary>
    public static Lookup Units { get; } = new(0, house =>
        house.Windows.Where(w => !w.LeftOut).SelectMany(w => w.Units.Select(u => ((string?)u.Id, w.Id))));

    /// <summary>The run of each unit that has one, in the order of the units.</summary>
    public static Lookup Runs { get; } = new(1, house => house.Units.Where(u => u.Run is not null).Select(u => ((string?)u.Id, u.Run!.Id)));

    /// <summary>The units whose runs land on each panel.</summary>
    public static Lookup UnitsByPanel { get; } = new(2, house => house.Runs.Select(r => (r.Item.Get(RunFacts.Panel)?.Id, r.Unit.Id)));

    /// <summary>The units paired with each hub.</summary>
    public static Lookup UnitsByHub { get; } = new(3, house => house.Units.Select(u => (u.Item.Get(UnitFacts.Hub)?.Id, u.Id)));

    /// <summary>The remotes that count at each hub.</summary>
    public static Lookup RemotesByHub { get; } = new(4, house => house.Remotes.Select(r => (r.Item.Get(RemoteFacts.Hub)?.Id, r.Id)));

    /// <summary>The remotes that move each unit.</summary>
    public static Lookup RemotesByUnit { get; } = new(5, house =>
        house.Remotes.SelectMany(r => r.Item.All(RemoteFacts.Moves).Where(m => m.Value == YesNo.Yes).Select(m => ((string?)m.Key, r.Id))));

    /// <summary>The windows with each tag, whatever its case.</summary>
    public static Lookup WindowsByTag { get; } = new(6, house => house.Windows.Select(w => ((string?)w.Tag, w.Id)), StringComparer.OrdinalIgnoreCase);

    /// <summary>The windows in each room.</summary>
    public static Lookup WindowsByRoom { get; } = new(7, house => house.Windows.Select(w => (w.RoomId, w.Id)));

    /// <summary>The units with each name at the hub, whatever its case.</summary>
    public static Lookup UnitsByHubName { get; } = new(8, house => house.Units.Select(u => (u.Item.Get(UnitFacts.HubName), u.Id)), StringComparer.OrdinalIgnoreCase);

    /// <summary>The units whose runs carry each label at either end, whatever its case.</summary>
    public static Lookup UnitsByLabel { get; } = new(9, house => house.Runs.SelectMany(r =>
        new[] { r.LabelAtWindow, r.LabelAtPanel }.OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Select(l => ((string?)l, r.Unit.Id))), StringComparer.OrdinalIgnoreCase);

    /// <summary>The units whose runs branch off each run.</summary>
    public static Lookup UnitsByTrunk { get; } = new(10, house => house.Runs.Select(r => (r.BranchesOff?.Id, r.Unit.Id)));

    /// <summary>How many there are.</summary>
    public static int Count => 11;

    /// <summary>All of them, each after those that it is made of.</summary>
    public static ImmutableArray<Lookup> All { get; } =
        [Units, Runs, UnitsByPanel, UnitsByHub, RemotesByHub, RemotesByUnit, WindowsByTag, WindowsByRoom, UnitsByHubName, UnitsByLabel, UnitsByTrunk];

    /// <summary>Its number, by which it is known in keys of reads.</summary>
    public int Number { get; }

    /// <summary>Makes it for a house.</summary>
    internal Made For(House house)
    {
        var values = ReadRecorder.Record(() =>
        {
            var byKey = new Dictionary<string, List<string>>(_keys);
            var order = new List<string>();
            foreach (var (key, value) in _make(house))
            {
                if (key is null)
                    continue;
                if (!byKey.TryGetValue(key, out var list))
                {
                    byKey.Add(key, list = []);
                    order.Add(key);
                }
                list.Add(value);
            }
            return (byKey, order);
        }, out var reads);
        return new Made(this, values.byKey, values.order, reads);
    }

    /// <summary>The key as it is recorded.</summary>
    private ReadKey KeyOf(string key) => ReadKey.Of(this, ReferenceEquals(_keys, Exact) ? key : key.ToUpperInvariant());

    /// <summary>A lookup as it is in one state of a house.</summary>
    internal sealed class Made(Lookup lookup, Dictionary<string, List<string>> byKey, List<string> order, HashSet<long> reads)
    {
        private static readonly List<string> None = [];

        private Dictionary<string, int>? _places;

        /// <summary>What is under a key, in its order.</summary>
        public IReadOnlyList<string> this[string key]
        {
            get
            {
                if (ReadRecorder.IsOn)
                    ReadRecorder.Note(lookup.KeyOf(key));
                return byKey.GetValueOrDefault(key) ?? None;
            }
        }

        /// <summary>All keys, in the order in which they came.</summary>
        public IReadOnlyList<string> Keys
        {
            get
            {
                ReadRecorder.Note(ReadKey.All(lookup));
                return order;
            }
        }

        /// <summary>The place of a key in that order.</summary>
        public int PlaceOf(string key)
        {
            ReadRecorder.Note(ReadKey.All(lookup));
            return (_places ??= order.Index().ToDictionary(o => o.Item, o => o.Index))[key];
        }

        /// <summary>What it was made of has changed.</summary>
        public bool IsTouchedBy(HashSet<long> changed) => changed.Count < reads.Count ? changed.Any(reads.Contains) : reads.Any(changed.Contains);

        /// <summary>What reads otherwise in this state than in an earlier one.</summary>
        public void AddOtherThanIn(Made before, HashSet<long> changed)
        {
            var same = order.SequenceEqual(before.Order);
            foreach (var key in order.Union(before.Order))
            {
                if (byKey.GetValueOrDefault(key, None).SequenceEqual(before.ByKey.GetValueOrDefault(key, None)))
                    continue;
                changed.Add(lookup.KeyOf(key).Value);
                same = false;
            }
            if (!same)
                changed.Add(ReadKey.All(lookup).Value);
        }

        private List<string> Order => order;

        private Dictionary<string, List<string>> ByKey => byKey;
    }
}
