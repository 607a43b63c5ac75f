using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>An inch is lost between the tape and the order.</summary>
public sealed class OrderedNarrowerBySlip : Fault
{
    public override string Goes => "an inch is lost between the tape and the order";

    public override string Costs => "light down both sides";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.OrderWidth, house.Typed(unit.Opening.Finished.Width - 27));
        return At(unit.Key, (unit.Key, UnitFacts.OrderWidth), (unit.Opening.Tag, WindowFacts.WidthTop)).Of(25, house.TapeError);
    }
}
