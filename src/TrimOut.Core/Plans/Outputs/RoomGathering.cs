namespace TrimOut.Core.Plans.Outputs;

/// <summary>Betters a way of landing by letting two runs change places, as long as rooms come closer together by it.</summary>
/// <remarks>Counts per panel stay as they are, and no set's load goes over the peak: so every figure that counts more than the rooms is kept.</remarks>
internal sealed class RoomGathering
{
    private readonly OutputOrder _order;
    private readonly int[] _panelOf;
    private readonly int _peak;
    private readonly int[] _roomOf;
    private readonly int[][] _setsOf;
    private readonly int[,] _inRoom;
    private readonly int[,] _load;
    private readonly bool[] _fixed;

    /// <summary>Begins with a way of landing.</summary>
    /// <param name="order">The order.</param>
    /// <param name="panelOf">The panel of each run; changed in place.</param>
    /// <param name="peak">The largest load of one set on one panel.</param>
    public RoomGathering(OutputOrder order, int[] panelOf, int peak)
    {
        (_order, _panelOf, _peak) = (order, panelOf, peak);
        var rooms = Numbered(order.Runs.Select(r => r.Room ?? $"\0{r.Id}"));
        var sets = Numbered(order.Runs.SelectMany(SetsOf));
        _roomOf = [.. order.Runs.Select(r => rooms[r.Room ?? $"\0{r.Id}"])];
        _setsOf = [.. order.Runs.Select(r => SetsOf(r).Select(s => sets[s]).Distinct().ToArray())];
        _fixed = [.. order.Runs.Select(r => r.Landed is not null && !order.MayMove)];
        _inRoom = new int[rooms.Count, order.Panels.Length];
        _load = new int[sets.Count, order.Panels.Length];
        for (var run = 0; run < panelOf.Length; run++)
            Put(run, panelOf[run], 1);
    }

    /// <summary>Lets runs change places until nothing gets better.</summary>
    /// <param name="budget">What it may take.</param>
    public void Improve(WorkBudget budget)
    {
        for (var better = true; better;)
        {
            better = false;
            for (var a = 0; a < _panelOf.Length; a++)
            {
                for (var b = a + 1; b < _panelOf.Length; b++)
                {
                    if (!budget.Take())
                        return;
                    better |= Swap(a, b);
                }
            }
        }
    }

    private bool Swap(int a, int b)
    {
        var (pa, pb) = (_panelOf[a], _panelOf[b]);
        if (pa == pb || _fixed[a] || _fixed[b] || _roomOf[a] == _roomOf[b] || Gain(a, pa, pb) + Gain(b, pb, pa) <= 0)
            return false;
        var before = Cost(a, b);
        Move(a, pb);
        Move(b, pa);
        if (Fits(a) && Fits(b) && Cost(a, b) <= before)
            return true;
        Move(a, pa);
        Move(b, pb);
        return false;
    }

    /// <summary>By how much the sum of squares of a room's runs per panel grows: many on one panel count more than few on each.</summary>
    private int Gain(int run, int from, int to) => 2 * (_inRoom[_roomOf[run], to] - _inRoom[_roomOf[run], from] + 1);

    private int Cost(int a, int b) => OutputSearch.PerSplit(_order) * (Panels(_roomOf[a]) + Panels(_roomOf[b])) + Moved(a) + Moved(b);

    private int Panels(int room) => Enumerable.Range(0, _order.Panels.Length).Count(p => _inRoom[room, p] > 0);

    private int Moved(int run) => _order.Runs[run].Landed is { } at && at.Panel != _order.Panels[_panelOf[run]].Id ? 1 : 0;

    private bool Fits(int run) => _setsOf[run].All(s => _load[s, _panelOf[run]] <= _peak);

    private void Move(int run, int to)
    {
        Put(run, _panelOf[run], -1);
        _panelOf[run] = to;
        Put(run, to, 1);
    }

    private void Put(int run, int panel, int count)
    {
        _inRoom[_roomOf[run], panel] += count;
        foreach (var set in _setsOf[run])
            _load[set, panel] += count * _order.Runs[run].Load;
    }

    private static IEnumerable<string> SetsOf(RunToLand run) => run.MovesWith.IsDefault ? Enumerable.Empty<string>() : run.MovesWith;

    private static Dictionary<string, int> Numbered(IEnumerable<string> names) =>
        names.Distinct().Select((name, at) => (name, at)).ToDictionary(n => n.name, n => n.at);
}
