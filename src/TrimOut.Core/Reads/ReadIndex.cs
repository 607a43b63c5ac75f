using System.Collections.Immutable;

namespace TrimOut.Core.Reads;

/// <summary>
/// Who read something, of several sets: made when it is first asked for, and good until a set has other sources or much was worked out again.
/// </summary>
internal sealed class ReadIndex
{
    private const int MostSince = 4096;

    private readonly ImmutableArray<IReadSets> _sets;

    // As it was when the index was made: the number of the first of each set, and who read what by these numbers.
    private readonly int[] _first;
    private readonly Lazy<(int[] Starts, int[] Readers, Dictionary<long, List<int>> Lookups)> _made;

    // Since then: where those of a set are now, and which were worked out again.
    private readonly int[]?[] _moved;
    private readonly ImmutableHashSet<(int Set, int At)> _since;

    /// <summary>An index of sets.</summary>
    public ReadIndex(ImmutableArray<IReadSets> sets)
    {
        _sets = sets;
        _first = new int[sets.Length + 1];
        for (var at = 0; at < sets.Length; at++)
            _first[at + 1] = _first[at] + sets[at].Count;
        _made = new(Make);
        _moved = new int[]?[sets.Length];
        _since = [];
    }

    private ReadIndex(ReadIndex of, ImmutableArray<IReadSets> sets, int[]?[] moved, ImmutableHashSet<(int Set, int At)> since) =>
        (_sets, _first, _made, _moved, _since) = (sets, of._first, of._made, moved, since);

    /// <summary>In one of the sets, those that read something that is another now.</summary>
    public List<int> TouchedBy(HashSet<long> changed, int set) => TouchedBy(changed, s => s == set)[set];

    /// <summary>In each of the sets, those that read something that is another now.</summary>
    public List<int>[] TouchedBy(HashSet<long> changed) => TouchedBy(changed, _ => true);

    /// <summary>The index of what came of the sets, when these of them were worked out again.</summary>
    public ReadIndex After(ImmutableArray<IReadSets> sets, List<int>[] touched)
    {
        var moved = _moved;
        var since = _since.ToBuilder();
        for (var set = 0; set < sets.Length; set++)
        {
            if (ReferenceEquals(sets[set].Sources, _sets[set].Sources))
            {
                foreach (var at in touched[set])
                    since.Add((set, at));
                continue;
            }
            if (sets[set].MovedFrom(_sets[set].Sources) is not { } to)
                return new ReadIndex(sets);
            if (ReferenceEquals(moved, _moved))
                moved = (int[]?[])_moved.Clone();
            moved[set] = _moved[set] is { } before ? Array.ConvertAll(before, at => at < 0 ? -1 : to[at]) : to;
            var again = _since.Where(s => s.Set == set).Select(s => s.At).ToList();
            since.ExceptWith(again.Select(at => (set, at)));
            var isThere = new bool[sets[set].Count];
            foreach (var at in to.Where(t => t >= 0))
                isThere[at] = true;
            since.UnionWith(again.Concat(touched[set]).Where(at => to[at] >= 0).Select(at => (set, to[at])));
            since.UnionWith(Enumerable.Range(0, isThere.Length).Where(at => !isThere[at]).Select(at => (set, at)));
        }
        return since.Count > MostSince ? new ReadIndex(sets) : new ReadIndex(this, sets, moved, since.ToImmutable());
    }

    private List<int>[] TouchedBy(HashSet<long> changed, Func<int, bool> asked)
    {
        var touched = new HashSet<(int Set, int At)>();
        foreach (var key in changed)
        {
            foreach (var reader in ReadersOf(key))
                Take(SetOf(reader) is var set && _moved[set] is { } moved ? (set, moved[reader - _first[set]]) : (set, reader - _first[set]), key);
            foreach (var reader in _since)
                Take(reader, key);
        }
        var bySet = new List<int>[_sets.Length];
        for (var set = 0; set < bySet.Length; set++)
            bySet[set] = [];
        foreach (var (set, at) in touched.Order())
            bySet[set].Add(at);
        return bySet;

        void Take((int Set, int At) reader, long key)
        {
            if (reader.At >= 0 && asked(reader.Set) && _sets[reader.Set].Reads(reader.At).Contains(key))
                touched.Add(reader);
        }
    }

    private IEnumerable<int> ReadersOf(long key)
    {
        var (starts, readers, lookups) = _made.Value;
        var read = new ReadKey(key);
        return read.IsLookup ? lookups.GetValueOrDefault(key) ?? []
            : read.Place + 1 < starts.Length ? (IEnumerable<int>)new ArraySegment<int>(readers, starts[read.Place], starts[read.Place + 1] - starts[read.Place])
            : [];
    }

    private int SetOf(int reader)
    {
        var at = Array.BinarySearch(_first, reader);
        if (at < 0)
            return ~at - 1;
        // Sets without anything begin where the next one does.
        while (_first[at + 1] == reader)
            at++;
        return at;
    }

    private (int[] Starts, int[] Readers, Dictionary<long, List<int>> Lookups) Make()
    {
        var lookups = new Dictionary<long, List<int>>();
        var (count, last) = (new List<int>(), new List<int>());
        var pairs = new List<(int Place, int Reader)>();
        for (var set = 0; set < _sets.Length; set++)
        {
            for (var at = 0; at < _sets[set].Count; at++)
            {
                var reader = _first[set] + at;
                foreach (var key in _sets[set].Reads(at))
                {
                    var read = new ReadKey(key);
                    if (read.IsLookup)
                    {
                        if (!lookups.TryGetValue(key, out var readers))
                            lookups.Add(key, readers = []);
                        readers.Add(reader);
                        continue;
                    }
                    while (count.Count <= read.Place)
                    {
                        count.Add(0);
                        last.Add(-1);
                    }
                    if (last[read.Place] == reader)
                        continue;
                    last[read.Place] = reader;
                    count[read.Place]++;
                    pairs.Add((read.Place, reader));
                }
            }
        }
        var starts = new int[count.Count + 1];
        for (var place = 0; place < count.Count; place++)
            starts[place + 1] = starts[place] + count[place];
        var (next, all) = ((int[])starts.Clone(), new int[pairs.Count]);
        foreach (var (place, reader) in pairs)
            all[next[place]++] = reader;
        return (starts, all, lookups);
    }
}
