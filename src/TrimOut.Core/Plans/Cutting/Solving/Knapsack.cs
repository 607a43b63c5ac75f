namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>The heaviest set of pieces that a box can hold, by branch and bound.</summary>
internal sealed class Knapsack
{
    private readonly long[] _sizes;
    private readonly int[] _most;
    private readonly int[] _order;
    private readonly long[] _weight;
    private readonly long[] _size;
    private readonly int[] _limit;
    private readonly double[] _ratio;
    private readonly long[] _shortest;
    private readonly int[] _take;
    private readonly int[] _best;

    private int _count;
    private long _bestWeight;
    private long _nodes;

    /// <summary>For pieces of these sizes.</summary>
    /// <param name="sizes">Sizes.</param>
    /// <param name="most">How many there are of each.</param>
    public Knapsack(long[] sizes, int[] most)
    {
        (_sizes, _most) = (sizes, most);
        _order = new int[sizes.Length];
        _weight = new long[sizes.Length];
        _size = new long[sizes.Length];
        _limit = new int[sizes.Length];
        _ratio = new double[sizes.Length + 1];
        _shortest = new long[sizes.Length + 1];
        _take = new int[sizes.Length];
        _best = new int[sizes.Length];
    }

    /// <summary>How many of each size the last answer takes.</summary>
    public int[] Amounts { get; private set; } = [];

    /// <summary>Sets what each size weighs.</summary>
    /// <param name="weights">Weights, none less than 0.</param>
    public void Weigh(long[] weights)
    {
        _count = 0;
        for (var i = 0; i < weights.Length; i++)
        {
            if (weights[i] > 0 && _most[i] > 0)
                _order[_count++] = i;
        }
        var keys = new double[_count];
        for (var i = 0; i < _count; i++)
            keys[i] = -(double)weights[_order[i]] / _sizes[_order[i]];
        Array.Sort(keys, _order, 0, _count);
        _shortest[_count] = long.MaxValue;
        for (var i = _count - 1; i >= 0; i--)
        {
            var at = _order[i];
            (_weight[i], _size[i], _limit[i]) = (weights[at], _sizes[at], _most[at]);
            // A little more than the true ratio, so that rounding never hides a better set.
            _ratio[i] = -keys[i] * (1 + 1e-12);
            _shortest[i] = Math.Min(_shortest[i + 1], _size[i]);
        }
        _ratio[_count] = 0;
    }

    /// <summary>The greatest weight that fits, or a number that it can't exceed when the search took too long.</summary>
    /// <param name="box">Room in the box.</param>
    /// <param name="budget">What it may take.</param>
    /// <param name="mostNodes">How many sets are looked at before it gives up.</param>
    public long Bound(long box, WorkBudget budget, long mostNodes)
    {
        (_bestWeight, _nodes) = (0, mostNodes);
        Array.Clear(_take, 0, _count);
        Array.Clear(_best, 0, _count);
        Try(0, box, 0);
        budget.Take((mostNodes - _nodes) / 2 + _count);
        Amounts = new int[_sizes.Length];
        for (var i = 0; i < _count; i++)
            Amounts[_order[i]] = _best[i];
        return _nodes > 0 ? _bestWeight : Math.Max(_bestWeight, (long)(box * _ratio[0]) + 1);
    }

    private void Try(int at, long room, long weight)
    {
        if (weight > _bestWeight)
        {
            _bestWeight = weight;
            Array.Copy(_take, _best, _count);
        }
        for (; at < _count && room >= _shortest[at]; at++)
        {
            if (--_nodes <= 0 || weight + (long)(room * _ratio[at]) + 1 <= _bestWeight)
                return;
            var most = (int)Math.Min(_limit[at], room / _size[at]);
            for (var n = most; n > 0; n--)
            {
                _take[at] = n;
                Try(at + 1, room - n * _size[at], weight + n * _weight[at]);
                if (_nodes <= 0)
                    break;
            }
            _take[at] = 0;
        }
    }
}
