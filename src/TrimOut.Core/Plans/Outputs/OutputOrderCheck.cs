namespace TrimOut.Core.Plans.Outputs;

/// <summary>Whether an order makes sense, before any work goes into it.</summary>
internal static class OutputOrderCheck
{
    private const int MostPanels = 64;

    /// <summary>What is wrong with an order; null when nothing is.</summary>
    public static Refusal? Refuse(OutputOrder order)
    {
        if (order.Runs.IsDefaultOrEmpty)
            return new Refusal("There is no run to land.");
        if (order.Panels.IsDefaultOrEmpty)
            return new Refusal("There is no panel to land on. Add a panel first.");
        if (order.Panels.Length > MostPanels)
            return new Refusal($"{order.Panels.Length} panels are too many to plan for: up to {MostPanels}.");
        if (order.Panels.FirstOrDefault(p => p.Outputs is < 1 or > 1000) is { } odd)
            return new Refusal($"Panel {odd.Id}: {odd.Outputs} outputs make no sense. Say how many it has.");
        if (order.Panels.GroupBy(p => p.Id).FirstOrDefault(g => g.Count() > 1) is { } panel)
            return new Refusal($"Panel {panel.Key} is in the order twice.");
        if (order.Runs.GroupBy(r => r.Id).FirstOrDefault(g => g.Count() > 1) is { } run)
            return new Refusal($"Run {run.Key} is in the order twice.");
        if (order.Runs.FirstOrDefault(r => r.Load is < 1 or > 1_000_000) is { } load)
            return new Refusal($"Run {load.Id}: a load of {load.Load} {order.LoadIn} makes no sense.");
        if (order.Runs.FirstOrDefault(r => r.Landed is { } at && !order.Panels.Any(p => p.Id == at.Panel)) is { } lost)
            return new Refusal($"Run {lost.Id} is landed on panel {lost.Landed!.Panel}, which is not in the order.");
        if (order.MayMove
            && order.Runs.FirstOrDefault(r => r.Landed is { } at && (at.Output < 1 || at.Output > order.Panels.Single(p => p.Id == at.Panel).Outputs)) is
            { } past)
            return new Refusal(
                $"Run {past.Id} is landed on output {past.Landed!.Output} of panel {past.Landed.Panel}, which it does not have. Put that right first.");
        var free = order.Panels.Sum(p => FreeOutputs(order, p));
        var waiting = order.Runs.Count(r => order.MayMove || r.Landed is null);
        return waiting <= free ? null
            : new Refusal($"{waiting} runs wait for an output and {free} are free. Add a panel first.");
    }

    /// <summary>Outputs of a panel that runs may be put on.</summary>
    public static int FreeOutputs(OutputOrder order, PanelToFill panel) => order.MayMove ? panel.Outputs
        : panel.Outputs - order.Runs.Where(r => r.Landed?.Panel == panel.Id).Select(r => r.Landed!.Output).Where(o => o >= 1 && o <= panel.Outputs).Distinct()
            .Count();
}
