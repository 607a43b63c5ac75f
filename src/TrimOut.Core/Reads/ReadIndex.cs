using System.Collections.Immutable;

namespace TrimOut.Core.Reads;

/// <summary>
/// Who read something, of several sets: made when it is first asked for, and good until a set has other sources or much was worked out again.
/// </summary>
internal sealed class ReadIndex
{
    private const int MostSince = 4096;

    private readonly ImmutableArray<IReadSets> _sets;
    private readonly int[] _first;
    private readonly Lazy<(int[] Starts, int[] Readers, Dictionary<long, List<int>> Lookups)> _made;
    private readonly ImmutableHashSet<int> _since;

    /// <summary>An index of sets.</summary>
    public ReadIndex(ImmutableArray<IReadSets> sets)
    {
        _sets = sets;
        _first = new int[sets.Length + 1];
        for (var at = 0; at < sets.Length; at++)
            _first[at + 1] = _first[at] + sets[at].Count;
        _made = new(Make);
        _since = [];
    }

    private ReadIndex(ReadIndex of, ImmutableArray<IReadSets> sets, ImmutableHashSet<int> since) =>
        (_sets, _first, _made, _since) = (sets, of._first, of._made, since);

    /// <summary>In one of the sets, those that read something that is another now.</summary>
    public List<int> TouchedBy(HashSet<long> changed, int set)
    {
        var touched = new HashSet<int>();
        foreach (var key in changed)
            Touch(key, touched, _first[set], _first[set + 1]);
        return [.. touched.Select(t => t - _first[set]).Order()];
    }

    /// <summary>In each of the sets, those that read something that is another now.</summary>
    public List<int>[] TouchedBy(HashSet<long> changed)
    {
        var touched = new HashSet<int>();
        foreach (var key in changed)
            Touch(key, touched, 0, int.MaxValue);
        var bySet = new List<int>[_sets.Length];
        for (var at = 0; at < bySet.Length; at++)
            bySet[at] = [];
        foreach (var reader in touched.Order())
        {
            var set = SetOf(reader);
            bySet[set].Add(reader - _first[set]);
        }
        return bySet;
    }

    /// <summary>The index of what came of the sets, when these of them were worked out again.</summary>
    public ReadIndex After(ImmutableArray<IReadSets> sets, List<int>[] touched)
    {
        for (var at = 0; at < sets.Length; at++)
        {
            if (!ReferenceEquals(sets[at].Sources, _sets[at].Sources))
                return new ReadIndex(sets);
        }
        var since = _since.Union(touched.SelectMany((t, at) => t.Select(j => _first[at] + j)));
        return since.Count > MostSince ? new ReadIndex(sets) : new ReadIndex(this, sets, since);
    }

    private void Touch(long key, HashSet<int> touched, int from, int to)
    {
        var (starts, readers, lookups) = _made.Value;
        var read = new ReadKey(key);
        if (read.IsLookup)
            Take(lookups.GetValueOrDefault(key) ?? [], key, touched, from, to);
        else if (read.Place + 1 < starts.Length)
            Take(new ArraySegment<int>(readers, starts[read.Place], starts[read.Place + 1] - starts[read.Place]), key, touched, from, to);
        Take(_since, key, touched, from, to);
    }

    private void Take(IEnumerable<int> readers, long key, HashSet<int> touched, int from, int to)
    {
        foreach (var reader in readers)
        {
            if (reader >= from && reader < to && SetOf(reader) is var set && _sets[set].Reads(reader - _first[set]).Contains(key))
                touched.Add(reader);
        }
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
