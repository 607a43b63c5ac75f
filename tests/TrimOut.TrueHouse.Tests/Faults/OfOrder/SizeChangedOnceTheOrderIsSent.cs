using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The order is sent, and before the maker answers an inch is taken off here.</summary>
public sealed class SizeChangedOnceTheOrderIsSent : Fault
{
    public override string Goes => "an inch is taken off a width here once the order is sent, and nobody calls";

    public override string Costs => "a box an inch wider than what is written, and nobody knows which of them is right";

    public override Stage In => Stage.Ordered;

    public override IReadOnlyList<string> DoNotNameIt => ["order-off-measures"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, UnitFacts.Acknowledgement);
        house.Slips.Does(Stage.Ordered, i => i.Book.Correct(unit.Key, UnitFacts.OrderWidth, house.Typed(unit.Opening.Finished.Width - 27)));
        house.Slips.Does(Stage.Received, i => i.Book.Correct(unit.Key, UnitFacts.Acknowledgement, $"A-{unit.Key}"));
        return From(Stage.Ordered, unit.Key);
    }
}
