using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Firm;

/// <summary>What is to be cut of one cable over several houses, by one plan.</summary>
/// <param name="Cable">The cable, as the kits call it.</param>
/// <param name="Order">The order; its runs and boxes are named by <see cref="Runs"/> and <see cref="Boxes"/>.</param>
/// <param name="Plan">The plan, or why there is none; null where nothing is to be cut.</param>
/// <param name="Runs">The house and the run that each name in the order stands for.</param>
/// <param name="Boxes">The house and the box on hand that each name in the order stands for.</param>
/// <param name="LeftOut">Runs and boxes that are not in the order, with their house and the reason.</param>
/// <param name="Differs">Conductor, listing and box of it, where another cable is called the same and differs in them; else empty.</param>
public sealed record FirmCable(
    string Cable, CutOrder Order, Result<CutPlan>? Plan, ImmutableDictionary<string, (string House, string Name)> Runs,
    ImmutableDictionary<string, FirmBox> Boxes, ImmutableArray<(string House, string Name, string Why)> LeftOut, string Differs)
{
    /// <summary>How many runs wait and are not in the order, because their length is not known yet.</summary>
    public int WithoutLength { get; init; }
}

/// <summary>A box that a plan may cut from without buying one.</summary>
/// <param name="House">The house that it is at, or was ordered for.</param>
/// <param name="Name">Its name; empty of one that is on its way.</param>
/// <param name="OrderedOn">The day on which it was ordered; null for one that is on hand.</param>
public readonly record struct FirmBox(string House, string Name, DateOnly? OrderedOn);

/// <summary>The runs of several houses as one order for each cable, so that what is left of a box in one house serves the next one.</summary>
public static class FirmCuts
{
    /// <summary>Works out the plans.</summary>
    /// <param name="houses">The houses with their history, which says what was ordered.</param>
    /// <param name="stop">Stops the work.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <remarks>
    /// Cables are one where the kits call them the same and agree about conductor, listing and the length of a box. A cut loses the most that one of the houses
    /// notes. Runs of one bundle come from boxes of their own in their house, and so they do here. The new boxes of a house whose cable was ordered are on
    /// their way: so many as its own plan buys for the runs that it had then are there to be cut from.
    /// </remarks>
    public static ImmutableArray<FirmCable> Of(IReadOnlyList<HouseLog> houses, CancellationToken stop = default)
    {
        var loss = houses.Select(h => h.House.Job.Get(HouseFacts.CutLoss) ?? Length.Zero).DefaultIfEmpty(Length.Zero).Max();
        var cables = houses.SelectMany((log, at) => HouseCuts.Orders(log.House, loss)
                .Select(cuts => new OfHouse(log.House, at, cuts, OnTheirWay(log, cuts, stop))))
            .GroupBy(c => (Name: c.Cuts.Cable.Name.ToUpperInvariant(), c.Cuts.Cable.Conductor, c.Cuts.Cable.Listing, c.Cuts.Order.NewBox)).ToList();
        return [.. cables.Select(same => Of([.. same], loss, cables.Count(c => c.Key.Name == same.Key.Name) > 1, stop))];
    }

    private sealed record OfHouse(House House, int At, CableCuts Cuts, (int Boxes, DateOnly? On) Ordered);

    /// <summary>The new boxes that were ordered for a house: what its own plan buys for the runs that were there when its cable was ordered.</summary>
    private static (int Boxes, DateOnly? On) OnTheirWay(HouseLog log, CableCuts cuts, CancellationToken stop)
    {
        if (cuts.Order.Pieces.IsEmpty || CallOff.OrderDay(log.House, Phase.RoughIn) is not { } on)
            return default;
        var since = CallOff.CameAfterOrder(log.House, log.Changes, log.House.Runs.Select(r => r.Item), Phase.RoughIn).Select(i => i.Id).ToHashSet();
        var names = log.House.Runs.Where(r => since.Contains(r.Id)).Select(r => r.Name).ToHashSet();
        var then = cuts.Order with { Pieces = [.. cuts.Order.Pieces.Where(p => !names.Contains(p.Id))] };
        return then.Pieces.IsEmpty || CutPlanner.Solve(then, stop: stop) is not { Ok: true } plan ? default : (plan.Value.ToBuy.Found, on);
    }

    private static FirmCable Of(List<OfHouse> same, Length loss, bool namesake, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        static string In(int at, string name) => $"{at}:{name}";
        // No box of a house is called so: its own have no number before the name that is the house's.
        static IEnumerable<string> Coming(OfHouse of) => Enumerable.Range(0, of.Cuts.Order.NewBox is null ? 0 : of.Ordered.Boxes).Select(n => $"{n}@{of.At}");
        var order = new CutOrder(
            [.. same.SelectMany(s => s.Cuts.Order.Pieces.Select(p => new Piece(In(s.At, p.Id), p.Length, p.Bundle is { } b ? In(s.At, b) : null)))],
            [
                .. same.SelectMany(s => s.Cuts.Order.Boxes.Select(b => new StockBox(In(s.At, b.Id), b.Length))),
                .. same.SelectMany(s => Coming(s).Select(id => new StockBox(id, s.Cuts.Order.NewBox!.Value))),
            ],
            loss, same[0].Cuts.Order.NewBox)
        {
            Units = same[0].House.DisplayUnits,
        };
        return new FirmCable(
            same[0].Cuts.Cable.Name, order, order.Pieces.IsEmpty ? (Result<CutPlan>?)null : CutPlanner.Solve(order, stop: stop),
            same.SelectMany(s => s.Cuts.Order.Pieces.Select(p => (Key: In(s.At, p.Id), Is: (s.House.Name, p.Id)))).ToImmutableDictionary(p => p.Key, p => p.Is),
            same.SelectMany(s => s.Cuts.Order.Boxes.Select(b => (Key: In(s.At, b.Id), Is: new FirmBox(s.House.Name, b.Id, null)))
                .Concat(Coming(s).Select(id => (Key: id, Is: new FirmBox(s.House.Name, "", s.Ordered.On))))).ToImmutableDictionary(b => b.Key, b => b.Is),
            [.. same.SelectMany(s => s.Cuts.LeftOut.Select(l => (s.House.Name, l.Subject.Name, l.Why)))], namesake ? Differs(same[0]) : "")
        {
            WithoutLength = same.Sum(s => s.Cuts.WithoutLength.Length),
        };
    }

    private static string Differs(OfHouse of) => string.Join(", ", new[] { CableTypeFacts.Conductor, (Fact)CableTypeFacts.Listing, CableTypeFacts.BoxLength }
        .Select(f => f.ShowOf(of.Cuts.Cable.Item, of.House)).Where(s => s.Length > 0));
}
