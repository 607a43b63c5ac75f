using System.Collections.Immutable;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Cutting;

/// <summary>What is to be cut of one cable in a house, and what is left out of it and why.</summary>
/// <param name="Cable">The cable.</param>
/// <param name="Order">The order; no run may be in it.</param>
/// <param name="LeftOut">Runs and boxes that are not in the order, each with the reason: nothing is left out silently.</param>
public sealed record CableCuts(CableType Cable, CutOrder Order, ImmutableArray<(Subject Subject, string Why)> LeftOut)
{
    /// <summary>Runs that wait to be cut and are not in the order, because their length is not known yet.</summary>
    public ImmutableArray<HomeRun> WithoutLength => [.. Waiting.Where(r => HouseCuts.WhyHeld(r) is null)];

    /// <summary>Runs that wait to be cut and are held back.</summary>
    public ImmutableArray<HomeRun> Held => [.. Waiting.Where(r => HouseCuts.WhyHeld(r) is not null)];

    private IEnumerable<HomeRun> Waiting => LeftOut.Select(l => l.Subject).OfType<HomeRun>().Where(r => !HouseCuts.IsPulled(r));

    /// <summary>Boxes on hand that are not in the order, because nobody said how much is left in them.</summary>
    public ImmutableArray<CableBox> UnknownBoxes => [.. LeftOut.Select(l => l.Subject).OfType<CableBox>().Where(b => b.Left is null)];
}

/// <summary>A house's runs and boxes as orders for cut plans, one for each cable.</summary>
public static class HouseCuts
{
    private const string Pulled = "cable-pulled";

    /// <summary>The orders with the loss per cut that the house notes; none where it notes none.</summary>
    public static ImmutableArray<CableCuts> Orders(House house) => Orders(house, house.Job.Get(HouseFacts.CutLoss) ?? Length.Zero);

    /// <summary>The orders, one for each cable that a run or a box has, in the order of the kit.</summary>
    /// <param name="house">The house.</param>
    /// <param name="lossPerCut">Cable lost at each cut.</param>
    /// <remarks>
    /// A run is in it until its cable is said to be pulled, and not while it is held back. Its length is <see cref="HomeRun.Needed"/>; a run with the same
    /// bundle as another comes from another box. Boxes of the length on the kit's sheet may be bought.
    /// </remarks>
    public static ImmutableArray<CableCuts> Orders(House house, Length lossPerCut) =>
    [
        .. house.ItemsOf(ItemKind.CableType)
            .Select(i => new CableType(house, i))
            .Select(c => Of(house, c, lossPerCut))
            .Where(c => !c.Order.Pieces.IsEmpty || !c.Order.Boxes.IsEmpty || !c.LeftOut.IsEmpty),
    ];

    private static CableCuts Of(House house, CableType cable, Length lossPerCut)
    {
        var runs = house.Runs.Where(r => r.Cable?.Id == cable.Id).ToArray();
        var boxes = house.Boxes.Where(b => b.Cable?.Id == cable.Id).ToArray();
        var pulled = runs.Where(IsPulled).ToHashSet();
        var held = runs.Where(r => !pulled.Contains(r)).Select(r => (Run: r, Why: WhyHeld(r))).Where(r => r.Why is not null)
            .ToDictionary(r => r.Run, r => r.Why!.Value);
        var order = new CutOrder(
            [.. runs.Where(r => !pulled.Contains(r) && !held.ContainsKey(r) && r.Needed is not null)
                .Select(r => new Piece(r.Name, r.Needed!.Value, r.Item.Get(RunFacts.Bundle)))],
            [.. boxes.Where(b => b.Left > Length.Zero).Select(b => new StockBox(b.Name, b.Left!.Value))],
            lossPerCut,
            cable.BoxLength)
        {
            Units = house.DisplayUnits,
        };
        return new CableCuts(cable, order,
        [
            .. runs.Where(pulled.Contains).Select(r => ((Subject)r, "pulled already")),
            .. held.Select(h => ((Subject)h.Key, h.Value switch
            {
                HeldBack.TooLong => "longer than its cable may be: not to be cut",
                _ => "not listed for where it goes: not to be cut",
            })),
            .. runs.Where(r => !pulled.Contains(r) && !held.ContainsKey(r) && r.Needed is null)
                .Select(r => ((Subject)r, "its length is not known: legs, tails, allowance")),
            .. boxes.Where(b => b.Left is null).Select(b => ((Subject)b, "how much is left in it is not known")),
            .. boxes.Where(b => b.Left == Length.Zero).Select(b => ((Subject)b, "it is empty")),
        ]);
    }

    /// <summary>Why the cable of a run is not to be cut; null where it may be, as far as is known.</summary>
    public static HeldBack? WhyHeld(HomeRun run) => run.IsTooLong ? HeldBack.TooLong : CableNotListed.IsOpen(run) ? HeldBack.NotListed : null;

    /// <summary>Whether the cable of a run is said to be pulled: then it is in no order.</summary>
    public static bool IsPulled(HomeRun run) => run.Unit.MarkOf(Phases.StepList.Find(Pulled)!) is not null;
}
