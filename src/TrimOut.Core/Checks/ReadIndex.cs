using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>Which judgements of some sheets read something: made when it is first asked for, and good until a sheet gets other subjects or much was judged again.</summary>
internal sealed class ReadIndex
{
    private const int MostSince = 4096;

    private readonly ImmutableArray<CheckSheet> _sheets;
    private readonly int[] _first;
    private readonly Lazy<(int[] Starts, int[] Judgements, Dictionary<long, List<int>> Lookups)> _made;
    private readonly ImmutableHashSet<int> _since;

    /// <summary>An index of sheets.</summary>
    public ReadIndex(ImmutableArray<CheckSheet> sheets)
    {
        _sheets = sheets;
        _first = new int[sheets.Length + 1];
        for (var at = 0; at < sheets.Length; at++)
            _first[at + 1] = _first[at] + sheets[at].Judgements;
        _made = new(Make);
        _since = [];
    }

    private ReadIndex(ReadIndex of, ImmutableArray<CheckSheet> sheets, ImmutableHashSet<int> since) =>
        (_sheets, _first, _made, _since) = (sheets, of._first, of._made, since);

    /// <summary>For each sheet the judgements that read something that is another now.</summary>
    public IReadOnlyList<int>[] TouchedBy(HashSet<long> changed)
    {
        var touched = new HashSet<int>();
        var (starts, judgements, lookups) = _made.Value;
        foreach (var key in changed)
        {
            var read = new ReadKey(key);
            if (read.IsLookup)
                Take(lookups.GetValueOrDefault(key) ?? [], key, touched);
            else if (read.Place + 1 < starts.Length)
                Take(new ArraySegment<int>(judgements, starts[read.Place], starts[read.Place + 1] - starts[read.Place]), key, touched);
            Take(_since, key, touched);
        }
        var bySheet = new List<int>[_sheets.Length];
        foreach (var judgement in touched.Order())
        {
            var sheet = SheetOf(judgement);
            (bySheet[sheet] ??= []).Add(judgement - _first[sheet]);
        }
        return [.. bySheet.Select(s => (IReadOnlyList<int>?)s ?? [])];
    }

    /// <summary>The index of the sheets that came of these, when these judgements of them were made again.</summary>
    public ReadIndex After(ImmutableArray<CheckSheet> sheets, IReadOnlyList<int>[] touched)
    {
        for (var at = 0; at < sheets.Length; at++)
        {
            if (!ReferenceEquals(sheets[at].Subjects, _sheets[at].Subjects))
                return new ReadIndex(sheets);
        }
        var since = _since.Union(touched.SelectMany((t, at) => t.Select(j => _first[at] + j)));
        return since.Count > MostSince ? new ReadIndex(sheets) : new ReadIndex(this, sheets, since);
    }

    private void Take(IEnumerable<int> judgements, long key, HashSet<int> touched)
    {
        foreach (var judgement in judgements)
        {
            if (ReadsOf(judgement).Contains(key))
                touched.Add(judgement);
        }
    }

    private ReadOnlySpan<long> ReadsOf(int judgement)
    {
        var sheet = SheetOf(judgement);
        return _sheets[sheet].Reads(judgement - _first[sheet]);
    }

    private int SheetOf(int judgement)
    {
        var at = Array.BinarySearch(_first, judgement);
        if (at < 0)
            return ~at - 1;
        // Sheets without judgements begin where the next one does.
        while (_first[at + 1] == judgement)
            at++;
        return at;
    }

    private (int[] Starts, int[] Judgements, Dictionary<long, List<int>> Lookups) Make()
    {
        var lookups = new Dictionary<long, List<int>>();
        var (count, last) = (new List<int>(), new List<int>());
        var pairs = new List<(int Place, int Judgement)>();
        for (var sheet = 0; sheet < _sheets.Length; sheet++)
        {
            for (var at = 0; at < _sheets[sheet].Judgements; at++)
            {
                var judgement = _first[sheet] + at;
                foreach (var key in _sheets[sheet].Reads(at))
                {
                    var read = new ReadKey(key);
                    if (read.IsLookup)
                    {
                        if (!lookups.TryGetValue(key, out var readers))
                            lookups.Add(key, readers = []);
                        readers.Add(judgement);
                        continue;
                    }
                    while (count.Count <= read.Place)
                    {
                        count.Add(0);
                        last.Add(-1);
                    }
                    if (last[read.Place] == judgement)
                        continue;
                    last[read.Place] = judgement;
                    count[read.Place]++;
                    pairs.Add((read.Place, judgement));
                }
            }
        }
        var starts = new int[count.Count + 1];
        for (var place = 0; place < count.Count; place++)
            starts[place + 1] = starts[place] + count[place];
        var next = (int[])starts.Clone();
        var judgements = new int[pairs.Count];
        foreach (var (place, judgement) in pairs)
            judgements[next[place]++] = judgement;
        return (starts, judgements, lookups);
    }
}
