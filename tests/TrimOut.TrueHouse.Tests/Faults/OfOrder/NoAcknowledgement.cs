using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>An order is said to be acknowledged and no number is there.</summary>
public sealed class NoAcknowledgement : Fault
{
    public override string Goes => "an order is said to be acknowledged and no number is there";

    public override string Costs => "an order that the maker never had";

    public override Stage In => Stage.Ordered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, UnitFacts.Acknowledgement);
        return From(Stage.Ordered, unit.Key);
    }
}
