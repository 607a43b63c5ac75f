using System.Collections.Immutable;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Houses;

/// <summary>A lookup as it is in one state of a house.</summary>
internal abstract class LookupMade
{
    /// <summary>What making it read.</summary>
    public abstract IReadSets Reads { get; }

    /// <summary>The same in another state of the house.</summary>
    /// <param name="house">The state.</param>
    /// <param name="changed">What reads otherwise in it; what reads otherwise in this is added.</param>
    /// <param name="touched">The sources that read some of that.</param>
    public abstract LookupMade After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched);
}

/// <summary>A lookup as it is in one state of a house, with what is under its keys.</summary>
/// <typeparam name="T">What is under a key.</typeparam>
internal sealed class LookupMade<T> : LookupMade
    where T : IEquatable<T>
{
    private const int MostSince = 512;

    private readonly Lookup<T> _lookup;
    private readonly Mapped<(string Key, T Value)[]> _map;
    private readonly Dictionary<string, Entries> _first;
    private readonly ImmutableDictionary<string, Entries> _since;
    private readonly Lazy<OrderedDictionary<string, int>> _order;

    private LookupMade(Lookup<T> lookup, Mapped<(string Key, T Value)[]> map, Dictionary<string, Entries> first, ImmutableDictionary<string, Entries> since)
    {
        (_lookup, _map, _first, _since) = (lookup, map, first, since);
        _order = new(() =>
        {
            var order = new OrderedDictionary<string, int>(lookup.Comparer);
            foreach (var (key, _) in map.Parts.SelectMany(p => p))
                order.TryAdd(key, order.Count);
            return order;
        });
    }

    /// <inheritdoc/>
    public override IReadSets Reads => _map;

    /// <summary>All keys, in the order in which they came.</summary>
    public IReadOnlyList<string> Keys
    {
        get
        {
            ReadRecorder.Note(ReadKey.All(_lookup));
            return _order.Value.Keys;
        }
    }

    /// <summary>What is under a key, in its order.</summary>
    public IReadOnlyList<T> this[string key]
    {
        get
        {
            if (ReadRecorder.IsOn)
                ReadRecorder.Note(_lookup.KeyOf(key));
            return Under(key).Values;
        }
    }

    /// <summary>Makes one for a state of a house.</summary>
    public static LookupMade<T> Of(Lookup<T> lookup, HouseState house) => Of(lookup, new Mapped<(string, T)[]>.Begun(lookup.Map, house).Done());

    /// <summary>The key before another in their order; null for the first. Only of a lookup that is a list of <see cref="Lookup.Neighbors"/>.</summary>
    public string? Before(string key)
    {
        ReadRecorder.Note(ReadKey.Before(_lookup, key));
        return BeforeIn(_order.Value, key);
    }

    /// <inheritdoc/>
    public override LookupMade After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched)
    {
        var map = _map.After(house, changed, touched);
        if (ReferenceEquals(map, _map))
            return this;
        LookupMade<T> after;
        IEnumerable<string> keys;
        if (ReferenceEquals(map.Ids, _map.Ids))
        {
            var moved = touched.Where(at => !map.Parts[at].AsSpan().SequenceEqual(_map.Parts[at])).ToList();
            keys = moved.SelectMany(at => _map.Parts[at].Concat(map.Parts[at])).Select(p => p.Key).Distinct(_lookup.Comparer).ToList();
            after = With(map, moved, keys);
            // The same things under the same keys may come in another order, such as two units of a window that change places.
            if (moved.Count > 0)
                changed.Add(ReadKey.All(_lookup).Value);
            if (moved.Count > 0 && _lookup.Neighbors)
                AddOtherNeighbors(after, changed);
        }
        else
        {
            after = Of(_lookup, map);
            keys = after._order.Value.Keys.Union(_order.Value.Keys, _lookup.Comparer);
            if (!after._order.Value.Keys.SequenceEqual(_order.Value.Keys))
                changed.Add(ReadKey.All(_lookup).Value);
            if (_lookup.Neighbors)
                AddOtherNeighbors(after, changed);
        }
        foreach (var key in keys)
        {
            if (after.Under(key).Values.AsSpan().SequenceEqual(Under(key).Values))
                continue;
            changed.Add(_lookup.KeyOf(key).Value);
            changed.Add(ReadKey.All(_lookup).Value);
        }
        return after;
    }

    private static string? BeforeIn(OrderedDictionary<string, int> order, string key) =>
        order.TryGetValue(key, out var place) && place > 0 ? order.GetAt(place - 1).Key : null;

    private void AddOtherNeighbors(LookupMade<T> after, HashSet<long> changed)
    {
        string? previous = null;
        foreach (var key in after._order.Value.Keys)
        {
            if (BeforeIn(_order.Value, key) != previous)
                changed.Add(ReadKey.Before(_lookup, key).Value);
            previous = key;
        }
    }

    private static LookupMade<T> Of(Lookup<T> lookup, Mapped<(string Key, T Value)[]> map)
    {
        var byKey = map.Parts.SelectMany((p, source) => p.Select(pair => (pair.Key, Source: source, pair.Value))).GroupBy(p => p.Key, lookup.Comparer)
            .ToDictionary(g => g.Key, g => new Entries([.. g.Select(p => p.Source)], [.. g.Select(p => p.Value)]), lookup.Comparer);
        return new LookupMade<T>(lookup, map, byKey, ImmutableDictionary.Create<string, Entries>(lookup.Comparer));
    }

    private LookupMade<T> With(Mapped<(string Key, T Value)[]> map, List<int> moved, IEnumerable<string> keys)
    {
        if (_since.Count > MostSince)
            return Of(_lookup, map);
        var since = _since;
        foreach (var key in keys)
        {
            var kept = Under(key);
            var entries = kept.Sources.Zip(kept.Values).Where(e => !moved.Contains(e.First))
                .Concat(moved.SelectMany(at => map.Parts[at].Where(p => _lookup.Comparer.Equals(p.Key, key)).Select(p => (First: at, Second: p.Value))))
                .OrderBy(e => e.First).ToList();
            since = since.SetItem(key, new Entries([.. entries.Select(e => e.First)], [.. entries.Select(e => e.Second)]));
        }
        return new LookupMade<T>(_lookup, map, _first, since);
    }

    private Entries Under(string key) =>
        _since.Count > 0 && _since.TryGetValue(key, out var now) ? now : _first.GetValueOrDefault(key, Entries.None);

    /// <summary>What is under one key: from which sources, and what.</summary>
    private sealed record Entries(int[] Sources, T[] Values)
    {
        public static readonly Entries None = new([], []);
    }
}
