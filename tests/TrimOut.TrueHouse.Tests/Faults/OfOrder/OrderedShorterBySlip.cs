using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>Two inches are lost between the tape and the order.</summary>
public sealed class OrderedShorterBySlip : Fault
{
    public override string Goes => "two inches are lost between the tape and the order";

    public override string Costs => "a unit that ends above the sill";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.OrderHeight, house.Typed(unit.Opening.Finished.Height - 50));
        return At(unit.Key, (unit.Key, UnitFacts.OrderHeight), (unit.Opening.Tag, WindowFacts.HeightLeft)).Of(50, house.TapeError);
    }
}
