namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>What is left to pack while patterns are taken over one by one.</summary>
internal sealed class Rest
{
    private readonly PieceSet _pieces;
    private readonly long[] _all;
    private readonly int[] _boxOf;
    private readonly Queue<int>[] _freeBoxes;
    private readonly List<int>[] _waiting;

    /// <summary>Everything left.</summary>
    public Rest(PieceSet pieces, long[] boxes, long[] kinds)
    {
        (_pieces, _all) = (pieces, boxes);
        Sizes = [.. pieces.Sizes.Distinct()];
        var row = Sizes.Select((s, at) => (s, at)).ToDictionary(p => p.s, p => p.at);
        _waiting = [.. Sizes.Select(_ => new List<int>())];
        for (var i = 0; i < pieces.Count; i++)
            _waiting[row[pieces.Sizes[i]]].Add(i);
        Demand = [.. _waiting.Select(w => w.Count)];
        _freeBoxes = [.. kinds.Select(k => new Queue<int>(Enumerable.Range(0, boxes.Length).Where(b => boxes[b] == k)))];
        Boxes = [.. _freeBoxes.Select(q => q.Count)];
        _boxOf = new int[pieces.Count];
        Left = pieces.Count;
    }

    /// <summary>Distinct sizes, longest first.</summary>
    public long[] Sizes { get; }

    /// <summary>Pieces left of each size.</summary>
    public int[] Demand { get; }

    /// <summary>Boxes left of each kind.</summary>
    public int[] Boxes { get; }

    /// <summary>Pieces left.</summary>
    public int Left { get; private set; }

    /// <summary>Packs a box by a pattern, as far as there are still such pieces.</summary>
    /// <returns>False when nothing of it is left, no box is, or pieces of one bundle would meet.</returns>
    public bool Take(Pattern pattern)
    {
        if (Boxes[pattern.Kind] == 0)
            return false;
        var (picked, bundles) = (new List<(int Row, int Piece)>(), new HashSet<int>());
        for (var i = 0; i < pattern.Rows.Length; i++)
        {
            var row = pattern.Rows[i];
            foreach (var piece in _waiting[row].Where(p => _pieces.Bundles[p] == PieceSet.Free || bundles.Add(_pieces.Bundles[p]))
                .Take(Math.Min(pattern.Amounts[i], Demand[row])))
                picked.Add((row, piece));
        }
        if (picked.Count == 0)
            return false;
        var box = _freeBoxes[pattern.Kind].Dequeue();
        Boxes[pattern.Kind]--;
        foreach (var (row, piece) in picked)
        {
            _waiting[row].Remove(piece);
            Demand[row]--;
            _boxOf[piece] = box;
        }
        Left -= picked.Count;
        return true;
    }

    /// <summary>Packs what is left by itself.</summary>
    public Verdict Finish(WorkBudget budget, out int[]? boxOf)
    {
        boxOf = null;
        var left = _waiting.SelectMany(w => w).Order().ToArray();
        var boxes = _freeBoxes.SelectMany(q => q).Order().ToArray();
        var room = boxes.Select(b => _all[b]).ToArray();
        int[]? packed = [];
        if (left.Length > 0)
        {
            var some = _pieces.Only(left);
            var part = budget.Part(300_000);
            packed = FirstFit.Pack(some, room) ?? FirstFit.Pack(some, room, best: true);
            if (packed is null && new Completion(some, room, part, 200, 5_000).Search(out packed) != Verdict.Fits)
                return Verdict.Unknown;
        }
        for (var i = 0; i < left.Length; i++)
            _boxOf[left[i]] = boxes[packed![i]];
        boxOf = _boxOf;
        return Verdict.Fits;
    }
}
