using System.Collections.Immutable;

namespace TrimOut.Core.Reads;

/// <summary>
/// What each of many judgements read: one behind the other in long rows, since nearly all of it is made at once and stays; what was judged again
/// stands beside it.
/// </summary>
internal sealed class ReadSets
{
    // Shorter than what the collector would keep apart from other objects.
    private const int Row = 8192;

    private readonly List<long[]> _rows;
    private readonly (int Row, int From, int To)[] _places;
    private readonly ImmutableDictionary<int, long[]> _again;

    private ReadSets(List<long[]> rows, (int Row, int From, int To)[] places, ImmutableDictionary<int, long[]> again) =>
        (_rows, _places, _again) = (rows, places, again);

    /// <summary>What a judgement read.</summary>
    public ReadOnlySpan<long> this[int judgement] => _again.Count > 0 && _again.TryGetValue(judgement, out var again) ? again
        : _rows[_places[judgement].Row].AsSpan(_places[judgement].From, _places[judgement].To - _places[judgement].From);

    /// <summary>These sets with others for some judgements.</summary>
    public ReadSets With(IReadOnlyDictionary<int, long[]> again) => new(_rows, _places, _again.SetItems(again));

    /// <summary>These sets for other judgements: most are as they were, in other places.</summary>
    /// <param name="from">For each judgement the place where it was; negative for one that is made anew.</param>
    /// <param name="to">For each earlier judgement its place now; negative for one that is gone.</param>
    /// <param name="again">What those read that were made anew, by their places now.</param>
    public ReadSets Moved(int[] from, int[] to, IReadOnlyDictionary<int, long[]> again)
    {
        var kept = _again.Where(a => to[a.Key] >= 0).Select(a => KeyValuePair.Create(to[a.Key], a.Value));
        return new(_rows, Array.ConvertAll(from, at => at < 0 ? default : _places[at]),
            ImmutableDictionary.CreateRange(kept).SetItems(again));
    }

    /// <summary>Sets that are added one after the other.</summary>
    internal sealed class Builder(int judgements)
    {
        private readonly (int Row, int From, int To)[] _places = new (int, int, int)[judgements];
        private readonly List<long[]> _rows = [];
        private int _used;
        private int _at;

        /// <summary>Adds what the next judgement read.</summary>
        public void Add(ReadOnlySpan<long> reads)
        {
            if (_rows.Count == 0 || _used + reads.Length > _rows[^1].Length)
            {
                _rows.Add(new long[Math.Max(Math.Min(Row, judgements * 32), reads.Length)]);
                _used = 0;
            }
            reads.CopyTo(_rows[^1].AsSpan(_used));
            _places[_at++] = (_rows.Count - 1, _used, _used += reads.Length);
        }

        /// <summary>All of them.</summary>
        public ReadSets Done() => new(_rows, _places, ImmutableDictionary<int, long[]>.Empty);
    }
}
