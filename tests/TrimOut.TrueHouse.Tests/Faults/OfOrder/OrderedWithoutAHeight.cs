using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>A line of the order goes out with a width and no height.</summary>
public sealed class OrderedWithoutAHeight : Fault
{
    public override string Goes => "a line of the order goes out with a width and no height";

    public override string Costs => "a unit in a height that the maker chose, or none while everybody waits";

    public override Stage In => Stage.Ordered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, UnitFacts.OrderHeight);
        house.Slips.LeavesUnmarked(unit.Key, "size-worked-out");
        return At(unit.Key, (unit.Key, UnitFacts.OrderedOn));
    }
}
