namespace TrimOut.Core.Plans.Outputs;

/// <summary>Finds the smallest peak, then the smallest cost with that peak, over all choices of panels.</summary>
internal sealed class OutputOptimum(OutputOrder order, List<PanelChoice> choices, WorkBudget budget)
{
    private readonly OutputGroups _groups = new(order);

    /// <summary>The smallest peak found.</summary>
    public int Peak { get; private set; }

    /// <summary>The peak that no plan undercuts.</summary>
    public int LeastPeak { get; private set; }

    /// <summary>The smallest cost found: splits, then moves.</summary>
    public int Cost { get; private set; }

    /// <summary>The cost that no plan with this peak undercuts.</summary>
    public int LeastCost { get; private set; }

    /// <summary>The panel of each run.</summary>
    public int[] PanelOf { get; private set; } = [];

    /// <summary>Searches.</summary>
    public void Search()
    {
        FindPeak();
        new RoomGathering(order, PanelOf, Peak).Improve(budget.Part(Math.Max(budget.Left / 6, 1)));
        Cost = CostOf(PanelOf);
        FindCost();
    }

    private void FindPeak()
    {
        var proven = true;
        var panels = choices[0].Panels.Length;
        Peak = LeastPeak = Company().GroupBy(c => c.Set, c => order.Runs[c.Run].Load).Max(g => Math.Max(g.Max(), 1 + (g.Sum() - 1) / panels));
        while (true)
        {
            var (verdict, next, _) = Try(Peak, int.MaxValue, budget.Part(Math.Max(budget.Left / 6, 1)));
            if (verdict == Verdict.Fits)
                return;
            proven &= verdict == Verdict.Impossible;
            if (budget.Left <= 1)
                break;
            Peak = proven ? next : Math.Max(Peak + 1, Peak + Peak / 8);
            if (proven)
                LeastPeak = Peak;
        }
        // Out of steps: with no peak to keep within, the first way is a way.
        Peak = int.MaxValue;
        Try(int.MaxValue / 2, int.MaxValue, new WorkBudget(long.MaxValue / 4, CancellationToken.None));
        Peak = PeakOf(PanelOf);
    }

    private void FindCost()
    {
        LeastCost = choices.Min(c => new OutputSearch(order, _groups, c, Peak, 0, budget).LeastCost);
        var proven = true;
        for (var most = LeastCost; most < Cost && !budget.Spent;)
        {
            var (verdict, _, next) = Try(Peak, most, budget.Part(Math.Max(budget.Left / 3, 1)));
            if (verdict == Verdict.Fits)
                break;
            proven &= verdict == Verdict.Impossible;
            most = proven ? next : most + OutputSearch.PerSplit(order);
            if (proven)
                LeastCost = Math.Min(most, Cost);
        }
        LeastCost = Math.Min(LeastCost, Cost);
    }

    private (Verdict Verdict, int NextPeak, int NextCost) Try(int peak, int most, WorkBudget part)
    {
        var (unknown, nextPeak, nextCost) = (false, int.MaxValue, int.MaxValue);
        foreach (var choice in choices)
        {
            var search = new OutputSearch(order, _groups, choice, peak, most, part);
            var verdict = search.Search(out var panelOf);
            if (verdict == Verdict.Fits)
            {
                (PanelOf, Cost) = (panelOf!, search.Cost);
                return (verdict, 0, 0);
            }
            unknown |= verdict == Verdict.Unknown;
            (nextPeak, nextCost) = (Math.Min(nextPeak, search.NextPeak), Math.Min(nextCost, search.NextCost));
        }
        return (unknown ? Verdict.Unknown : Verdict.Impossible, nextPeak, nextCost);
    }

    private int PeakOf(int[] panelOf) =>
        Company().GroupBy(c => (c.Set, panelOf[c.Run]), c => order.Runs[c.Run].Load).Max(g => g.Sum());

    private int CostOf(int[] panelOf) =>
        OutputSearch.PerSplit(order) * order.Runs.Select((r, i) => (r.Room, Panel: panelOf[i])).Where(r => r.Room is not null).GroupBy(r => r.Room)
            .Sum(g => g.Distinct().Count() - 1) +
        order.Runs.Where((r, i) => order.MayMove && r.Landed is { } at && at.Panel != order.Panels[panelOf[i]].Id).Count();

    /// <summary>What each run moves with; at the least with itself.</summary>
    private IEnumerable<(string Set, int Run)> Company() => order.Runs.SelectMany((r, i) =>
        (r.MovesWith.IsDefault ? [] : r.MovesWith.Distinct()).Append($"\0{r.Id}").Select(set => (set, i)));
}
