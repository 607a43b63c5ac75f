using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace TrimOut.Core.Reads;

/// <summary>
/// Who read something, of several sets: made when it is first asked for, and good until a set has other sources or much was worked out again.
/// </summary>
internal sealed class ReadIndex
{
    private const int MostSince = 4096;
    private const int ManyReaders = 256;

    private readonly ImmutableArray<IReadSets> _sets;

    // As it was when the index was made: the number of the first of each set, and who read what by these numbers: of most places who read anything
    // of it, of those that many read, and of lookups, who read each thing.
    private readonly int[] _first;
    private readonly Lazy<(int[] Starts, int[] Readers, Dictionary<long, List<int>> Exact)> _made;

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
    public List<int> TouchedBy(HashSet<long> changed, int set) => TouchedBy(changed, set, set + 1)[0];

    /// <summary>In each of the sets, those that read something that is another now.</summary>
    public List<int>[] TouchedBy(HashSet<long> changed) => TouchedBy(changed, 0, _sets.Length);

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

    private List<int>[] TouchedBy(HashSet<long> changed, int from, int to)
    {
        var touched = new HashSet<(int Set, int At)>();
        foreach (var key in changed)
        {
            var set = from;
            foreach (var reader in ReadersOf(key, from, to))
            {
                while (reader >= _first[set + 1])
                    set++;
                var at = reader - _first[set];
                Take((set, _moved[set] is { } moved ? moved[at] : at), key);
            }
        }
        foreach (var reader in _since)
        {
            if (reader.Set < from || reader.Set >= to)
                continue;
            foreach (var key in changed)
                Take(reader, key);
        }
        var bySet = new List<int>[to - from];
        for (var set = 0; set < bySet.Length; set++)
            bySet[set] = [];
        foreach (var (set, at) in touched.Order())
            bySet[set - from].Add(at);
        return bySet;

        void Take((int Set, int At) reader, long key)
        {
            if (reader.At >= 0 && _sets[reader.Set].Reads(reader.At).Contains(key))
                touched.Add(reader);
        }
    }

    private ReadOnlySpan<int> ReadersOf(long key, int from, int to)
    {
        var (starts, readers, exact) = _made.Value;
        var all = exact.TryGetValue(key, out var known) ? CollectionsMarshal.AsSpan(known)
            : new ReadKey(key) is { IsLookup: false, Place: var place } && place + 1 < starts.Length ? readers.AsSpan(starts[place]..starts[place + 1])
            : [];
        return all[Before(all, _first[from])..Before(all, _first[to])];

        static int Before(Span<int> readers, int reader) => readers.BinarySearch(reader) is var at && at < 0 ? ~at : at;
    }

    private (int[] Starts, int[] Readers, Dictionary<long, List<int>> Exact) Make()
    {
        var (count, last) = (new List<int>(), new List<int>());
        ForEachRead((key, reader) =>
        {
            if (key.IsLookup)
                return;
            while (count.Count <= key.Place)
            {
                count.Add(0);
                last.Add(-1);
            }
            if (last[key.Place] == reader)
                return;
            last[key.Place] = reader;
            count[key.Place]++;
        });
        var starts = new int[count.Count + 1];
        for (var place = 0; place < count.Count; place++)
            starts[place + 1] = starts[place] + (count[place] > ManyReaders ? 0 : count[place]);
        var (next, all, exact) = ((int[])starts.Clone(), new int[starts[^1]], new Dictionary<long, List<int>>());
        ForEachRead((key, reader) =>
        {
            if (key.IsLookup || count[key.Place] > ManyReaders)
            {
                if (!exact.TryGetValue(key.Value, out var readers))
                    exact.Add(key.Value, readers = []);
                if (readers.Count == 0 || readers[^1] != reader)
                    readers.Add(reader);
            }
            else if (next[key.Place] == starts[key.Place] || all[next[key.Place] - 1] != reader)
            {
                all[next[key.Place]++] = reader;
            }
        });
        return (starts, all, exact);
    }

    private void ForEachRead(Action<ReadKey, int> take)
    {
        for (var set = 0; set < _sets.Length; set++)
        {
            for (var at = 0; at < _sets[set].Count; at++)
            {
                foreach (var key in _sets[set].Reads(at))
                    take(new ReadKey(key), _first[set] + at);
            }
        }
    }
}
