namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>How many pieces of which sizes come out of one box.</summary>
/// <param name="Kind">Which kind of box.</param>
/// <param name="Rows">Numbers of the sizes.</param>
/// <param name="Amounts">How many of each.</param>
internal sealed record Pattern(int Kind, int[] Rows, int[] Amounts);

/// <summary>Whether pieces fit into boxes when boxes may be cut up in fractions: if not even then, they don't fit at all.</summary>
/// <remarks>
/// Column generation (Gilmore and Gomory 1961): the least total length of pieces that stay without a box is sought over all
/// patterns, by the revised simplex method with an explicit inverse. Floating point only guides it. That pieces don't fit is
/// said on whole numbers alone: weights per size of which the pieces together have more than the boxes together can hold,
/// each box's most found exactly (Farley 1990).
/// </remarks>
internal sealed class PatternLp
{
    private const double Tiny = 1e-9;
    private const double Scale = 1 << 30;

    private readonly long[] _sizes;
    private readonly int[] _demand;
    private readonly long[] _kinds;
    private readonly int[] _boxes;
    private readonly WorkBudget _budget;
    private readonly List<Pattern> _pool;
    private readonly Knapsack _knapsack;
    private readonly int _rows;
    private readonly int _height;
    private readonly double[][] _inverse;
    private readonly double[] _value;
    private readonly double[] _cost;
    private readonly int[] _basis;
    private readonly double[] _dual;
    private readonly double[] _column;
    private readonly long[] _weights;

    /// <summary>A problem.</summary>
    /// <param name="sizes">Distinct sizes.</param>
    /// <param name="demand">How many pieces of each.</param>
    /// <param name="kinds">Room in each kind of box.</param>
    /// <param name="boxes">How many boxes of each kind.</param>
    /// <param name="pool">Patterns to begin with; new ones are added to it.</param>
    /// <param name="budget">What it may take.</param>
    public PatternLp(long[] sizes, int[] demand, long[] kinds, int[] boxes, List<Pattern> pool, WorkBudget budget)
    {
        (_sizes, _demand, _kinds, _boxes, _pool, _budget) = (sizes, demand, kinds, boxes, pool, budget);
        _rows = sizes.Length;
        _height = _rows + kinds.Length;
        _knapsack = new(sizes, demand);
        _inverse = [.. Enumerable.Range(0, _height).Select(i => { var row = new double[_height]; row[i] = 1; return row; })];
        _value = [.. demand.Select(d => (double)d), .. boxes.Select(b => (double)b)];
        // Basis numbers: a pattern from 0; below, what stays without a box, spare boxes, and pieces too many.
        _basis = [.. Enumerable.Range(0, _height).Select(i => -1 - i)];
        var longest = (double)sizes.DefaultIfEmpty(1).Max();
        _cost = [.. sizes.Select(s => s / longest), .. kinds.Select(_ => 0.0)];
        _dual = new double[_height];
        _column = new double[_height];
        _weights = new long[_rows];
    }

    /// <summary>Whether the last answer was that no packing is possible, and why: what each size weighs.</summary>
    public IReadOnlyList<long>? Proof { get; private set; }

    /// <summary>The patterns of a fractional packing and how much of each.</summary>
    public IEnumerable<(Pattern Pattern, double Amount)> Solution =>
        Enumerable.Range(0, _height).Where(i => _basis[i] >= 0 && _value[i] > Tiny).Select(i => (_pool[_basis[i]], _value[i]));

    /// <summary>Solves it.</summary>
    public Verdict Solve()
    {
        var stalled = 0;
        var last = double.MaxValue;
        while (_budget.Take(16 + (long)_height * _height / 24))
        {
            var missing = Missing();
            if (missing <= 1e-7)
                return Verdict.Fits;
            stalled = missing < last - 1e-12 ? 0 : stalled + 1;
            last = missing;
            if (stalled > 20 * _height)
                return Verdict.Unknown;
            Duals();
            if (Entering(out var pattern) is not { } entering)
                return Proof is null ? Verdict.Unknown : Verdict.Impossible;
            Enter(entering, pattern);
        }
        return Verdict.Unknown;
    }

    private double Missing()
    {
        var sum = 0.0;
        for (var i = 0; i < _height; i++)
        {
            if (IsMissing(_basis[i]))
                sum += _cost[-1 - _basis[i]] * _value[i];
        }
        return sum;
    }

    private bool IsMissing(int basis) => basis < 0 && basis >= -_rows;

    private void Duals()
    {
        Array.Clear(_dual);
        for (var i = 0; i < _height; i++)
        {
            if (!IsMissing(_basis[i]))
                continue;
            var (cost, row) = (_cost[-1 - _basis[i]], _inverse[i]);
            for (var j = 0; j < row.Length; j++)
                _dual[j] += cost * row[j];
        }
    }

    private int? Entering(out Pattern? pattern)
    {
        pattern = null;
        var (gain, best) = (Tiny, (int?)null);
        for (var i = 0; i < _rows; i++)
        {
            if (-_dual[i] > gain)
                (gain, best) = (-_dual[i], -1 - _height - i);
        }
        for (var k = _rows; k < _height; k++)
        {
            if (_dual[k] > gain)
                (gain, best) = (_dual[k], -1 - k);
        }
        if (best is not null)
            return best;
        for (var p = 0; p < _pool.Count; p++)
        {
            var worth = Worth(_pool[p]);
            if (worth > gain)
                (gain, best, pattern) = (worth, p, _pool[p]);
        }
        _budget.Take(_pool.Count / 8);
        return best ?? Price(out pattern);
    }

    private double Worth(Pattern pattern)
    {
        var sum = _dual[_rows + pattern.Kind];
        for (var i = 0; i < pattern.Rows.Length; i++)
            sum += _dual[pattern.Rows[i]] * pattern.Amounts[i];
        return sum;
    }

    private int? Price(out Pattern? pattern)
    {
        pattern = null;
        Int128 need = 0;
        for (var i = 0; i < _rows; i++)
        {
            _weights[i] = (long)(Math.Max(0, _dual[i]) * Scale);
            need += (Int128)_weights[i] * _demand[i];
        }
        _knapsack.Weigh(_weights);
        Int128 holds = 0;
        var gain = Tiny;
        for (var kind = 0; kind < _kinds.Length; kind++)
        {
            if (_boxes[kind] == 0)
                continue;
            holds += (Int128)_knapsack.Bound(_kinds[kind], _budget, 200_000) * _boxes[kind];
            var rows = Enumerable.Range(0, _rows).Where(i => _knapsack.Amounts[i] > 0).ToArray();
            var found = new Pattern(kind, rows, [.. rows.Select(i => _knapsack.Amounts[i])]);
            if (Worth(found) is var worth && worth > gain)
                (gain, pattern) = (worth, found);
        }
        if (need > holds)
        {
            Proof = [.. _weights];
            return null;
        }
        if (pattern is null)
            return null;
        _pool.Add(pattern);
        return _pool.Count - 1;
    }

    private void Enter(int entering, Pattern? pattern)
    {
        Direction(entering, pattern);
        var (at, least) = (-1, double.MaxValue);
        for (var i = 0; i < _height; i++)
        {
            if (_column[i] <= Tiny)
                continue;
            var ratio = _value[i] / _column[i];
            if (ratio < least - 1e-12 || (ratio <= least + 1e-12 && at >= 0 && _column[i] > _column[at]))
                (at, least) = (i, Math.Min(least, ratio));
        }
        if (at < 0)
            return;
        var pivot = _inverse[at];
        var by = 1 / _column[at];
        for (var j = 0; j < pivot.Length; j++)
            pivot[j] *= by;
        _value[at] *= by;
        for (var i = 0; i < _height; i++)
        {
            var times = _column[i];
            if (i == at || times == 0)
                continue;
            var row = _inverse[i];
            for (var j = 0; j < row.Length; j++)
                row[j] -= times * pivot[j];
            _value[i] = Math.Max(0, _value[i] - times * _value[at]);
        }
        _basis[at] = entering;
    }

    private void Direction(int entering, Pattern? pattern)
    {
        for (var i = 0; i < _height; i++)
        {
            var row = _inverse[i];
            double sum;
            if (pattern is null)
            {
                sum = entering < -_height ? -row[-1 - _height - entering] : row[-1 - entering];
            }
            else
            {
                sum = row[_rows + pattern.Kind];
                for (var j = 0; j < pattern.Rows.Length; j++)
                    sum += row[pattern.Rows[j]] * pattern.Amounts[j];
            }
            _column[i] = sum;
        }
    }
}
