using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Firm;

/// <summary>What is to be cut of one cable over several houses, by one plan.</summary>
/// <param name="Cable">The cable, as the kits call it.</param>
/// <param name="Order">The order; its runs and boxes are named by <see cref="Runs"/> and <see cref="Boxes"/>.</param>
/// <param name="Plan">The plan, or why there is none; null where nothing is to be cut.</param>
/// <param name="Runs">The house and the run that each name in the order stands for.</param>
/// <param name="Boxes">The house and the box on hand that each name in the order stands for.</param>
/// <param name="LeftOut">Runs and boxes that are not in the order, with their house and the reason.</param>
public sealed record FirmCable(
    string Cable, CutOrder Order, Result<CutPlan>? Plan, ImmutableDictionary<string, (string House, string Name)> Runs,
    ImmutableDictionary<string, (string House, string Name)> Boxes, ImmutableArray<(string House, string Name, string Why)> LeftOut);

/// <summary>The runs of several houses as one order for each cable, so that what is left of a box in one house serves the next one.</summary>
public static class FirmCuts
{
    /// <summary>Works out the plans.</summary>
    /// <param name="houses">The houses.</param>
    /// <param name="stop">Stops the work.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <remarks>
    /// Cables are one where the kits call them the same and agree about conductor, listing and the length of a box. A cut loses the most that one of the houses
    /// notes. Runs of one bundle come from boxes of their own in their house, and so they do here.
    /// </remarks>
    public static ImmutableArray<FirmCable> Of(IReadOnlyList<House> houses, CancellationToken stop = default)
    {
        var loss = houses.Select(h => h.Job.Get(HouseFacts.CutLoss) ?? Length.Zero).DefaultIfEmpty(Length.Zero).Max();
        return
        [
            .. houses.SelectMany((house, at) => HouseCuts.Orders(house, loss).Select(cuts => (House: house, At: at, Cuts: cuts)))
                .GroupBy(c => (Name: c.Cuts.Cable.Name.ToUpperInvariant(), c.Cuts.Cable.Conductor, c.Cuts.Cable.Listing, c.Cuts.Order.NewBox))
                .Select(same => Of([.. same], loss, stop)),
        ];
    }

    private static FirmCable Of(List<(House House, int At, CableCuts Cuts)> same, Length loss, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        static string In(int at, string name) => $"{at}:{name}";
        var order = new CutOrder(
            [.. same.SelectMany(s => s.Cuts.Order.Pieces.Select(p => new Piece(In(s.At, p.Id), p.Length, p.Bundle is { } b ? In(s.At, b) : null)))],
            [.. same.SelectMany(s => s.Cuts.Order.Boxes.Select(b => new StockBox(In(s.At, b.Id), b.Length)))],
            loss, same[0].Cuts.Order.NewBox)
        {
            Units = same[0].House.DisplayUnits,
        };
        return new FirmCable(
            same[0].Cuts.Cable.Name, order, order.Pieces.IsEmpty ? (Result<CutPlan>?)null : CutPlanner.Solve(order, stop: stop),
            same.SelectMany(s => s.Cuts.Order.Pieces.Select(p => (Key: In(s.At, p.Id), Is: (s.House.Name, p.Id)))).ToImmutableDictionary(p => p.Key, p => p.Is),
            same.SelectMany(s => s.Cuts.Order.Boxes.Select(b => (Key: In(s.At, b.Id), Is: (s.House.Name, b.Id)))).ToImmutableDictionary(b => b.Key, b => b.Is),
            [.. same.SelectMany(s => s.Cuts.LeftOut.Select(l => (s.House.Name, l.Subject.Name, l.Why)))]);
    }
}
