using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Reads;

namespace TrimOut.Testing;

/// <summary>What of a fact was read: its value, or what stands beside it.</summary>
public enum Beside
{
    Value,
    Meter,
    Leads,
    CableAt,
    Checked,

    /// <summary>All details of the item alike, whatever they are.</summary>
    Everything,
}

/// <summary>A fact that was read.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="What">Whether it was its value, or what stands beside it.</param>
public readonly record struct FactRead(Fact Fact, Beside What);

/// <summary>The facts behind what is read of a house while something is worked out from it.</summary>
/// <remarks>Lookups and lists are followed to the facts that they are made of.</remarks>
public sealed class NotedReads
{
    private readonly HouseState _state;
    private readonly HashSet<FactRead> _facts = [];
    private readonly HashSet<(int Lookup, string? Key)> _followed = [];

    private NotedReads(HouseState state) => _state = state;

    /// <summary>What work reads of a house that nothing was read of yet.</summary>
    public static IReadOnlySet<FactRead> Of(House house, Action<House> work) => OfThis(new House(house.State), work);

    /// <summary>What work reads of this very house; lists that were asked for before count as read.</summary>
    public static IReadOnlySet<FactRead> OfThis(House house, Action<House> work)
    {
        var noted = new NotedReads(house.State);
        noted.Follow(() => work(house));
        return noted._facts;
    }

    /// <summary>What the judgements of a check read of a house, each on a view of its own.</summary>
    public static IReadOnlySet<FactRead> Of(ICheck check, House house)
    {
        if (check is not SubjectCheck by)
            return Of(house, view => _ = check.Run(view).ToList());
        var noted = new NotedReads(house.State);
        foreach (var id in by.SubjectIds(house).ToList())
            noted.Follow(() => _ = by.RunOn(by.Find(new House(house.State), id)).ToList());
        return noted._facts;
    }

    private void Follow(Action work)
    {
        ReadRecorder.Record(() =>
        {
            work();
            return true;
        }, out var reads);
        foreach (var read in reads.Select(r => new ReadKey(r)))
            Follow(read);
    }

    private void Follow(ReadKey read)
    {
        if (read.IsLookup)
            Follow(Lookup.All.Single(l => ReadKey.All(l).Value == WholeOf(read).Value), read);
        else if (read == ReadKey.Rooms)
            _facts.Add(new(RoomFacts.WalkingOrder, Beside.Value));
        else if (read == ReadKey.Windows)
        {
            _facts.UnionWith([new(RoomFacts.WalkingOrder, Beside.Value), new(WindowFacts.Room, Beside.Value),
                new(WindowFacts.PlaceInRoom, Beside.Value)]);
        }
        else if (read.Sort == ReadSort.AllFields)
            _facts.UnionWith(FactTable.Of(_state.Items[read.Place].Kind).Select(f => new FactRead(f, Beside.Everything)));
        else if (read.Place < _state.Items.Count && _state.Items[read.Place].Kind is var kind && read.FactOf(kind) is { } fact)
            _facts.Add(new(fact, read.Sort == ReadSort.Field ? BesideOf(read, kind) : Beside.Value));
    }

    /// <summary>
    /// A look under one key depends on what put something there; the whole of a lookup, and what stands before a key, on all sources and on their order.
    /// </summary>
    private void Follow(Lookup lookup, ReadKey read)
    {
        var whole = read.Sort != ReadSort.LookupKey;
        if (!_followed.Add((lookup.Number, whole ? null : read.Value.ToString(CultureInfo.InvariantCulture))))
            return;
        var sources = lookup.Sources(new House(_state)).ToList();
        if (whole)
            Follow(() => _ = lookup.Sources(new House(_state)).ToList());
        var under = sources.Where(s => lookup.KeysFrom(new House(_state), s).Any(k => lookup.KeyOf(k) == read)).ToList();
        foreach (var source in whole || under.Count == 0 ? sources : under)
            Follow(() => _ = lookup.KeysFrom(new House(_state), source).ToList());
    }

    private static ReadKey WholeOf(ReadKey read) => new(read.Value & ~(long)uint.MaxValue);

    private static Beside BesideOf(ReadKey read, ItemKind kind)
    {
        var fields = FieldSlots.Of(kind).Fields;
        var slot = read.Value & 0xffffff;
        return slot >= fields.Length ? Beside.Value : fields[(int)slot].Split('#') switch
        {
            [_, "meter"] => Beside.Meter,
            [_, "leads"] => Beside.Leads,
            [_, "cable-at"] => Beside.CableAt,
            [_, "checked"] => Beside.Checked,
            _ => Beside.Value,
        };
    }
}
