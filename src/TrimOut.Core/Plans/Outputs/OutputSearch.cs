using System.Numerics;
using System.Text;

namespace TrimOut.Core.Plans.Outputs;

/// <summary>Puts runs on chosen panels, room by room, within a peak and a cost: finds a way or proves that there is none.</summary>
/// <remarks>
/// Depth first over how many of each sort of run go to which panel; states that failed are remembered, panels that are alike are told apart only once something
/// lies on them.
/// </remarks>
internal sealed class OutputSearch
{
    private readonly OutputGroups _groups;
    private readonly PanelChoice _choice;
    private readonly WorkBudget _budget;
    private readonly int _peak;
    private readonly int _most;
    private readonly int _perSplit;
    private readonly int[] _count;
    private readonly int[][] _load;
    private readonly bool[] _plain;
    private readonly int[] _leastAfter;
    private readonly int[][] _liveSets;
    private readonly Dictionary<AlikeRuns, int[]> _amounts = [];
    private readonly HashSet<string> _failed = [];

    private int _spare;

    /// <summary>A search.</summary>
    /// <param name="order">The order.</param>
    /// <param name="groups">Its runs.</param>
    /// <param name="choice">The panels.</param>
    /// <param name="peak">The largest load of one set on one panel.</param>
    /// <param name="most">The largest cost: splits of rooms, each worth more than all moves together, and moves.</param>
    /// <param name="budget">What it may take.</param>
    public OutputSearch(OutputOrder order, OutputGroups groups, PanelChoice choice, int peak, int most, WorkBudget budget)
    {
        (_groups, _choice, _budget, _peak, _most) = (groups, choice, budget, peak, most);
        _perSplit = PerSplit(order);
        var panels = choice.Panels;
        _count = new int[panels.Length];
        _load = [.. panels.Select(_ => new int[groups.SetCount])];
        foreach (var (run, panel, sets) in groups.Fixed)
        {
            var at = Array.IndexOf(panels, panel);
            _count[at]++;
            foreach (var set in sets)
                _load[at][set] += order.Runs[run].Load;
        }
        var homes = order.Runs.Select(r => r.Landed?.Panel).ToHashSet();
        _plain = [.. panels.Select(p => !homes.Contains(order.Panels[p].Id))];
        var rooms = groups.Rooms.Length;
        _spare = groups.Rooms.Sum(r => r.Alike.Sum(a => a.Runs.Length)) - choice.Least.Select((least, p) => Math.Max(0, least - _count[p])).Sum();
        (_leastAfter, _liveSets) = (new int[rooms + 1], new int[rooms + 1][]);
        _liveSets[rooms] = [];
        for (var r = rooms - 1; r >= 0; r--)
        {
            _leastAfter[r] = _leastAfter[r + 1] + _perSplit * LeastSplits(groups.Rooms[r]);
            _liveSets[r] = [.. _liveSets[r + 1].Union(groups.Rooms[r].Alike.SelectMany(a => a.Sets)).Order()];
        }
        LeastCost = _leastAfter[0];
    }

    /// <summary>A cost that no way undercuts, seen without searching.</summary>
    public int LeastCost { get; }

    /// <summary>The cost of the way that was found.</summary>
    public int Cost { get; private set; }

    /// <summary>After a failure: the least peak above this one that any way has.</summary>
    public int NextPeak { get; private set; } = int.MaxValue;

    /// <summary>After a failure: the least cost above this one that any way has.</summary>
    public int NextCost { get; private set; } = int.MaxValue;

    /// <summary>What a split costs in moves: more than all moves together.</summary>
    public static int PerSplit(OutputOrder order) => 1 + (order.MayMove ? order.Runs.Count(r => r.Landed is not null) : 0);

    /// <summary>Searches.</summary>
    /// <param name="panelOf">The panel of each run, when there is a way.</param>
    public Verdict Search(out int[]? panelOf)
    {
        panelOf = null;
        if (_groups.Fixed.Length > 0 && _load.SelectMany(l => l).DefaultIfEmpty().Max() is var there && there > _peak)
        {
            NextPeak = there;
            return Verdict.Impossible;
        }
        if (LeastCost > _most)
        {
            NextCost = LeastCost;
            return Verdict.Impossible;
        }
        var found = NextRoom(0, 0);
        _budget.Look();
        if (!found)
            return _budget.Spent ? Verdict.Unknown : Verdict.Impossible;
        panelOf = new int[_groups.Rooms.Sum(r => r.Alike.Sum(a => a.Runs.Length)) + _groups.Fixed.Length];
        foreach (var (run, panel, _) in _groups.Fixed)
            panelOf[run] = panel;
        foreach (var (alike, amounts) in _amounts)
        {
            var next = 0;
            for (var p = 0; p < amounts.Length; p++)
            {
                for (var n = 0; n < amounts[p]; n++)
                    panelOf[alike.Runs[next++]] = _choice.Panels[p];
            }
        }
        return Verdict.Fits;
    }

    private bool NextRoom(int room, int cost)
    {
        if (_budget.Spent || !_budget.Take(1 + _count.Length / 4))
            return false;
        if (room == _groups.Rooms.Length)
        {
            Cost = cost;
            return true;
        }
        var state = State(room, cost);
        if (_failed.Contains(state))
            return false;
        var on = 0UL;
        foreach (var panel in _groups.Rooms[room].On)
            on |= 1UL << Array.IndexOf(_choice.Panels, panel);
        if (NextSort(room, 0, on, cost))
            return true;
        if (!_budget.Spent)
            _failed.Add(state);
        return false;
    }

    private bool NextSort(int room, int sort, ulong on, int cost)
    {
        var sorts = _groups.Rooms[room].Alike;
        if (sort == sorts.Length)
            return NextRoom(room + 1, cost + _perSplit * Splits(on));
        var alike = sorts[sort];
        var order = Enumerable.Range(0, _count.Length)
            .OrderByDescending(p => _choice.Panels[p] == alike.Home)
            .ThenByDescending(p => _most == int.MaxValue ? 0 : (on >> p) & 1)
            .ThenBy(p => alike.Sets.Max(s => (int?)_load[p][s]) ?? 0)
            .ThenByDescending(p => _choice.Most[p] - _count[p]).ToArray();
        var same = new bool[order.Length];
        for (var i = 1; i < order.Length; i++)
            same[i] = Same(order[i - 1], order[i], on);
        return Share(room, sort, alike, order, same, 0, alike.Runs.Length, new int[order.Length], on, cost);
    }

    private bool Share(int room, int sort, AlikeRuns alike, int[] order, bool[] same, int at, int left, int[] amounts, ulong on, int cost)
    {
        if (cost + _perSplit * Splits(on) + _leastAfter[room + 1] is var least && least > _most)
        {
            NextCost = Math.Min(NextCost, least);
            return false;
        }
        if (left == 0)
        {
            _amounts[alike] = amounts;
            return NextSort(room, sort + 1, on, cost);
        }
        if (at == order.Length || _budget.Spent || !_budget.Take())
            return false;
        var panel = order[at];
        var most = MostOf(alike, panel, left);
        if (same[at])
            most = Math.Min(most, amounts[order[at - 1]]);
        // Within a cost, a room is kept together first; for the peak alone, spread out first.
        var even = _most == int.MaxValue ? Math.Min(most, 1 + (left - 1) / (order.Length - at)) : most;
        for (var i = 0; i <= most; i++)
        {
            var n = i <= even ? even - i : i;
            Put(alike, panel, n);
            amounts[panel] = n;
            var moved = alike.Home >= 0 && _choice.Panels[panel] != alike.Home ? n : 0;
            if (Share(room, sort, alike, order, same, at + 1, left - n, (int[])amounts.Clone(), n > 0 ? on | (1UL << panel) : on, cost + moved))
                return true;
            Put(alike, panel, -n);
            amounts[panel] = 0;
        }
        return false;
    }

    private int MostOf(AlikeRuns alike, int panel, int left)
    {
        // Beyond the least of this panel only those may go that no other panel's least waits for.
        var most = Math.Min(left, Math.Min(_choice.Most[panel] - _count[panel], Math.Max(0, _choice.Least[panel] - _count[panel]) + _spare));
        foreach (var set in alike.Sets)
        {
            var fit = (_peak - _load[panel][set]) / alike.Load;
            if (fit < most)
            {
                NextPeak = Math.Min(NextPeak, _load[panel][set] + (fit + 1) * alike.Load);
                most = fit;
            }
        }
        return most;
    }

    private void Put(AlikeRuns alike, int panel, int count)
    {
        var over = Math.Max(0, _count[panel] - _choice.Least[panel]);
        _count[panel] += count;
        _spare -= Math.Max(0, _count[panel] - _choice.Least[panel]) - over;
        foreach (var set in alike.Sets)
            _load[panel][set] += count * alike.Load;
    }

    private bool Same(int a, int b, ulong on) =>
        _plain[a] && _plain[b] && ((on >> a) & 1) == ((on >> b) & 1) && _count[a] == _count[b] &&
        _choice.Least[a] == _choice.Least[b] && _choice.Most[a] == _choice.Most[b] && _load[a].AsSpan().SequenceEqual(_load[b]);

    private static int Splits(ulong on) => Math.Max(0, BitOperations.PopCount(on) - 1);

    private int LeastSplits(OutputRoom room)
    {
        var runs = room.Alike.Sum(a => a.Runs.Length);
        var panels = Math.Max(room.On.Length, runs == 0 ? 0 : 1 + (runs - 1) / Math.Max(1, _choice.Most.Max()));
        foreach (var set in room.Alike.SelectMany(a => a.Sets).Distinct())
        {
            var load = room.Alike.Where(a => a.Sets.Contains(set)).Sum(a => a.Load * a.Runs.Length);
            panels = Math.Max(panels, 1 + (load - 1) / _peak);
        }
        return Math.Max(0, panels - 1);
    }

    private string State(int room, int cost)
    {
        var columns = new string[_count.Length];
        var text = new StringBuilder();
        for (var p = 0; p < columns.Length; p++)
        {
            text.Clear().Append(_plain[p] ? "" : $"#{p}").Append(_choice.Least[p]).Append('-').Append(_choice.Most[p]).Append(':').Append(_count[p]);
            foreach (var set in _liveSets[room])
                text.Append(',').Append(_load[p][set]);
            columns[p] = text.ToString();
        }
        Array.Sort(columns, StringComparer.Ordinal);
        return $"{room} {cost} {string.Join(' ', columns)}";
    }
}
