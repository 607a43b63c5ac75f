using TrimOut.Core.Houses;

namespace TrimOut.Core.Reads;

/// <summary>
/// One thing worked out for each of many sources in a house, with what each read, so that only what read something that changed is worked out again.
/// </summary>
/// <typeparam name="T">What is worked out.</typeparam>
internal sealed class Mapped<T> : IReadSets
{
    private readonly Map<T> _map;
    private readonly string[] _ids;
    private readonly HashSet<long> _listReads;
    private readonly T[] _parts;
    private readonly ReadSets _reads;
    private (string[] Ids, int[] To)? _cameFrom;

    private Mapped(Map<T> map, string[] ids, HashSet<long> listReads, T[] parts, ReadSets reads) =>
        (_map, _ids, _listReads, _parts, _reads) = (map, ids, listReads, parts, reads);

    /// <summary>The ids of the sources, in their order.</summary>
    public IReadOnlyList<string> Ids => _ids;

    /// <summary>What was worked out for each.</summary>
    public IReadOnlyList<T> Parts => _parts;

    /// <inheritdoc/>
    public object Sources => _ids;

    /// <inheritdoc/>
    public int Count => _ids.Length;

    /// <inheritdoc/>
    public ReadOnlySpan<long> Reads(int at) => _reads[at];

    /// <summary>The same in another state of the house.</summary>
    /// <param name="house">The state.</param>
    /// <param name="changed">What reads otherwise in it.</param>
    /// <param name="touched">The sources whose part read some of that, by their places.</param>
    /// <returns>This very object when nothing of it can be another.</returns>
    public Mapped<T> After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched)
    {
        if (changed.Overlaps(_listReads))
            return WithOtherSources(house, touched);
        if (touched.Count == 0)
            return this;
        var (recorder, parts, again, same) = (new ReadRecorder(), (T[])_parts.Clone(), new Dictionary<int, long[]>(), true);
        foreach (var at in touched)
        {
            parts[at] = _map.Of(house, _ids[at], recorder, out var reads);
            same = same && EqualityComparer<T>.Default.Equals(parts[at], _parts[at]);
            // Most of what is worked out again reads the same as before, only other values.
            if (!reads.SequenceEqual(_reads[at]))
                again[at] = reads.ToArray();
        }
        return same && again.Count == 0 ? this : new Mapped<T>(_map, _ids, _listReads, parts, again.Count == 0 ? _reads : _reads.With(again));
    }

    /// <inheritdoc/>
    public int[]? MovedFrom(object sources) => ReferenceEquals(sources, _cameFrom?.Ids) ? _cameFrom.Value.To : null;

    private Mapped<T> WithOtherSources(HouseState house, IReadOnlyList<int> touched)
    {
        var ids = ReadRecorder.Record(() => _map.Sources(new House(house)).ToArray(), out var listReads);
        var (from, to) = Moves.Between(_ids, ids);
        foreach (var at in touched.Where(t => to[t] >= 0))
            from[to[at]] = -1;
        var (recorder, parts, again) = (new ReadRecorder(), new T[ids.Length], new Dictionary<int, long[]>());
        for (var at = 0; at < ids.Length; at++)
        {
            if (from[at] >= 0)
            {
                parts[at] = _parts[from[at]];
                continue;
            }
            parts[at] = _map.Of(house, ids[at], recorder, out var reads);
            again[at] = reads.ToArray();
        }
        return new Mapped<T>(_map, ids, listReads, parts, _reads.Moved(from, to, again)) { _cameFrom = (_ids, to) };
    }

    /// <summary>One that is filled source after source.</summary>
    internal sealed class Begun
    {
        private readonly Map<T> _map;
        private readonly HouseState _house;
        private readonly string[] _ids;
        private readonly HashSet<long> _listReads;
        private readonly T[] _parts;
        private readonly ReadSets.Builder _reads;
        private readonly ReadRecorder _recorder = new();
        private int _at;

        public Begun(Map<T> map, HouseState house)
        {
            (_map, _house) = (map, house);
            _ids = ReadRecorder.Record(() => map.Sources(new House(house)).ToArray(), out _listReads);
            _parts = new T[_ids.Length];
            _reads = new ReadSets.Builder(_ids.Length);
        }

        /// <summary>How many sources there are.</summary>
        public int Count => _ids.Length;

        /// <summary>Works out the next ones, as far as this place.</summary>
        public void WorkOutUpTo(int end)
        {
            for (; _at < Math.Min(end, _ids.Length); _at++)
            {
                _parts[_at] = _map.Of(_house, _ids[_at], _recorder, out var reads);
                _reads.Add(reads);
            }
        }


        /// <summary>All of it.</summary>
        public Mapped<T> Done()
        {
            WorkOutUpTo(_ids.Length);
            return new Mapped<T>(_map, _ids, _listReads, _parts, _reads.Done());
        }
    }
}

/// <summary>What is worked out for each of many sources, and how.</summary>
/// <typeparam name="T">What is worked out.</typeparam>
/// <param name="Sources">The ids of the sources, in their order.</param>
/// <param name="Part">What is worked out for one of them; through when it returns.</param>
internal sealed record Map<T>(Func<House, IEnumerable<string>> Sources, Func<House, string, T> Part)
{
    /// <summary>Works it out on a view of the house that nothing was read of yet: whatever that keeps for itself was then read for this.</summary>
    public T Of(HouseState house, string id, ReadRecorder recorder, out ReadOnlySpan<long> reads)
    {
        recorder.Begin();
        try
        {
            return Part(new House(house), id);
        }
        finally
        {
            reads = recorder.End();
            if (Forgets is not null)
                reads = reads.ToArray().Where(r => !Forgets(new ReadKey(r))).ToArray();
        }
    }

    /// <summary>Reads that are not noted, for tests that show that noting them is needed.</summary>
    public Func<ReadKey, bool>? Forgets { get; init; }
}
