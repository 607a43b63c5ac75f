namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>Packs box by box: the longest piece left goes into a box, which is then filled up in every way worth trying.</summary>
/// <remarks>
/// Bin completion (Martello and Toth 1990, Korf 2002). A filling is worth trying when no piece left could be added to it
/// or take the place of a shorter one in it, and when it wastes no more than all boxes together can spare. With no limit on
/// the fillings tried per box the search is exact; states that failed are remembered.
/// </remarks>
internal sealed class Completion
{
    private const int MostRemembered = 200_000;

    private readonly PieceSet _pieces;
    private readonly long[] _sizes;
    private readonly int[] _bundles;
    private readonly WorkBudget _budget;
    private readonly int _width;
    private readonly int _scan;
    private readonly long[] _kinds;
    private readonly int[] _firstOfKind;
    private readonly int[] _left;
    private readonly bool[] _used;
    private readonly int[] _boxOf;
    private readonly long[] _tailSum;
    private readonly bool[] _inBox;
    private readonly int[] _chosen;
    private readonly int[] _passed;
    private readonly UInt128[] _pieceKeys;
    private readonly UInt128[] _kindKeys;
    private readonly HashSet<UInt128> _failed = [];

    private UInt128 _state;
    private bool _cut;
    private int _chosenCount;
    private int _passedCount;
    private int _scanLeft;
    private long _slack;
    private List<Filling> _fillings = [];

    /// <summary>A search.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="boxes">Room in each box, largest first.</param>
    /// <param name="budget">How much it may take.</param>
    /// <param name="width">How many fillings are tried for a box; <see cref="int.MaxValue"/> for all.</param>
    /// <param name="scan">How many are looked at to choose these from.</param>
    public Completion(PieceSet pieces, long[] boxes, WorkBudget budget, int width = int.MaxValue, int scan = int.MaxValue)
    {
        (_pieces, _sizes, _bundles, _budget, _width, _scan) = (pieces, pieces.Sizes, pieces.Bundles, budget, width, scan);
        _kinds = [.. boxes.Distinct()];
        _left = [.. _kinds.Select(k => boxes.Count(b => b == k))];
        _firstOfKind = [.. _kinds.Select(k => Array.IndexOf(boxes, k))];
        _used = new bool[pieces.Count];
        _boxOf = new int[pieces.Count];
        _tailSum = new long[pieces.Count + 1];
        _chosen = new int[pieces.Count];
        _passed = new int[pieces.Count];
        _inBox = new bool[pieces.BundleCount];
        _slack = boxes.Sum() - pieces.Total;
        var seed = 0x9E3779B97F4A7C15UL;
        _pieceKeys = [.. Enumerable.Range(0, pieces.Count).Select(_ => Key(ref seed))];
        _kindKeys = [.. boxes.Select(_ => Key(ref seed))];
    }

    /// <summary>Searches.</summary>
    /// <param name="boxOf">The box of each piece, when they fit.</param>
    public Verdict Search(out int[]? boxOf)
    {
        boxOf = null;
        if (_slack < 0)
            return Verdict.Impossible;
        var found = Pack(0);
        _budget.Look();
        if (found)
            boxOf = _boxOf;
        return found ? Verdict.Fits : _cut || _budget.Spent ? Verdict.Unknown : Verdict.Impossible;
    }

    private bool Pack(int from)
    {
        while (from < _used.Length && _used[from])
            from++;
        if (from == _used.Length)
            return true;
        if (_budget.Spent || !_budget.Take())
            return false;
        if (_failed.Contains(_state))
            return false;
        var cutBefore = _cut;
        _cut = false;
        foreach (var filling in FillingsWith(from))
        {
            Place(filling);
            if (Pack(from + 1))
                return true;
            TakeBack(filling);
            if (_budget.Spent)
                break;
        }
        if (!_cut && !_budget.Spent && _failed.Count < MostRemembered)
            _failed.Add(_state);
        _cut |= cutBefore;
        return false;
    }

    private List<Filling> FillingsWith(int first)
    {
        for (var i = _used.Length - 1; i >= first; i--)
            _tailSum[i] = _tailSum[i + 1] + (_used[i] ? 0 : _sizes[i]);
        _budget.Take(1 + (_used.Length - first) / 16);
        _fillings = [];
        for (var kind = 0; kind < _kinds.Length; kind++)
        {
            if (_left[kind] == 0 || _kinds[kind] < _sizes[first])
                continue;
            _scanLeft = _scan;
            (_chosen[0], _chosenCount, _passedCount) = (first, 1, 0);
            Mark(first, true);
            Fill(kind, first + 1, _kinds[kind] - _sizes[first]);
            Mark(first, false);
        }
        var found = _fillings;
        var order = found.ToArray();
        var rooms = order.Select((f, at) => (f.Waste, at)).ToArray();
        Array.Sort(rooms, order);
        return [.. order.Take(_width)];
    }

    private void Fill(int kind, int at, long room)
    {
        if (_scanLeft <= 0 || _budget.Spent)
        {
            _cut = true;
            return;
        }
        _scanLeft--;
        _budget.Take();
        at = NextThatFits(at, room);
        while (at < _sizes.Length && _bundles[at] != PieceSet.Free && _inBox[_bundles[at]])
            at = NextThatFits(at + 1, room);
        if (at >= _sizes.Length)
        {
            if (room <= _slack && WorthTrying(room))
                Keep(kind, room);
            return;
        }
        if (room - _tailSum[at] > _slack)
            return;
        _chosen[_chosenCount++] = at;
        Mark(at, true);
        Fill(kind, at + 1, room - _sizes[at]);
        Mark(at, false);
        _chosenCount--;
        var next = at + 1;
        while (next < _sizes.Length && (_used[next] || _pieces.Alike(at, next)))
            next++;
        _passed[_passedCount++] = at;
        Fill(kind, next, room);
        _passedCount--;
    }

    private void Keep(int kind, long room)
    {
        _fillings.Add(new(kind, room, _chosen.AsSpan(0, _chosenCount).ToArray()));
        if (_width < int.MaxValue && _fillings.Count >= 2 * _width + 16)
        {
            _cut = true;
            var rooms = _fillings.Select((f, at) => (f.Waste, at)).ToArray();
            var order = _fillings.ToArray();
            Array.Sort(rooms, order);
            _fillings = [.. order.Take(_width)];
        }
        else if (_fillings.Count > _width)
        {
            _cut = true;
        }
        if (room == 0 && _width == 1)
            _scanLeft = 0;
    }

    // A piece passed over that could be added, or could take the place of a shorter one, makes a filling at least as good.
    private bool WorthTrying(long room)
    {
        for (var p = 0; p < _passedCount; p++)
        {
            var piece = _passed[p];
            var bundle = _bundles[piece];
            var clashes = bundle != PieceSet.Free && _inBox[bundle];
            if (!clashes && _sizes[piece] <= room)
                return false;
            for (var c = 1; c < _chosenCount; c++)
            {
                var shorter = _chosen[c];
                if (_sizes[shorter] < _sizes[piece] && _sizes[piece] - _sizes[shorter] <= room
                    && (_bundles[shorter] == bundle || (!clashes && _bundles[shorter] == PieceSet.Free)))
                    return false;
            }
        }
        return true;
    }

    private int NextThatFits(int from, long room)
    {
        if (from < _sizes.Length && _sizes[from] > room)
        {
            var (low, high) = (from + 1, _sizes.Length);
            while (low < high)
            {
                var middle = (low + high) / 2;
                (low, high) = _sizes[middle] > room ? (middle + 1, high) : (low, middle);
            }
            from = low;
        }
        while (from < _sizes.Length && _used[from])
            from++;
        return from;
    }

    private void Place(Filling filling)
    {
        var box = _firstOfKind[filling.Kind] + --_left[filling.Kind];
        _state ^= _kindKeys[box];
        foreach (var piece in filling.Pieces)
        {
            _used[piece] = true;
            _boxOf[piece] = box;
            _state ^= _pieceKeys[piece];
        }
        _slack -= filling.Waste;
    }

    private void TakeBack(Filling filling)
    {
        var box = _firstOfKind[filling.Kind] + _left[filling.Kind]++;
        _state ^= _kindKeys[box];
        foreach (var piece in filling.Pieces)
        {
            _used[piece] = false;
            _state ^= _pieceKeys[piece];
        }
        _slack += filling.Waste;
    }

    private void Mark(int piece, bool inBox)
    {
        if (_bundles[piece] != PieceSet.Free)
            _inBox[_bundles[piece]] = inBox;
    }

    private static UInt128 Key(ref ulong seed) => new(Next(ref seed), Next(ref seed));

    // SplitMix64 (Steele, Lea and Flood 2014): the same keys on every machine.
    private static ulong Next(ref ulong seed)
    {
        unchecked
        {
            seed += 0x9E3779B97F4A7C15UL;
            var z = seed;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }

    private sealed record Filling(int Kind, long Waste, int[] Pieces);
}
