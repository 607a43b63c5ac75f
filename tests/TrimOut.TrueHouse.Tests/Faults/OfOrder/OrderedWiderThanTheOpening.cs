using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The largest width is ordered for an inside mount.</summary>
public sealed class OrderedWiderThanTheOpening : Fault
{
    public override string Goes => "the largest width is ordered for an inside mount";

    public override string Costs => "a unit that does not go in and can't be cut";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.OrderWidth, house.Typed(unit.Opening.Finished.Width + 14));
        return At(unit.Key, (unit.Key, UnitFacts.OrderWidth), (unit.Opening.Tag, WindowFacts.WidthTop)).Of(14, house.TapeError);
    }
}
