using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Cutting;

/// <summary>What is cut of one cable: the order, what is left out of it, and the plan or why there is none.</summary>
/// <param name="Cuts">The order.</param>
/// <param name="Plan">The plan; null where nothing is to be cut.</param>
public sealed record PlannedCable(CableCuts Cuts, Result<CutPlan>? Plan);

/// <summary>The cut plans of a house, one for each cable, worked out once for all that asks for them.</summary>
public static class CutPlans
{
    // Enough for a house of a few hundred runs in about a tenth of a second; past it the plan says how far it may be off.
    private const long PlanningSteps = CutPlanner.UsualSteps / 10;

    /// <summary>Works them out, with the boxes on hand and the loss per cut that the house notes.</summary>
    /// <param name="house">The house.</param>
    /// <param name="says">Told which cable is being planned.</param>
    /// <param name="stop">Stops the work.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImmutableArray<PlannedCable> Of(House house, Action<string>? says = null, CancellationToken stop = default)
    {
        var orders = HouseCuts.Orders(house);
        return [.. orders.Select((cuts, at) =>
        {
            stop.ThrowIfCancellationRequested();
            says?.Invoke(string.Create(CultureInfo.InvariantCulture, $"{at + 1} of {orders.Length}, {cuts.Cable.Name}"));
            return new PlannedCable(cuts, cuts.Order.Pieces.IsEmpty ? (Result<CutPlan>?)null : CutPlanner.Solve(cuts.Order, steps: PlanningSteps, stop: stop));
        })];
    }
}
