using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>A unit comes two inches shorter than it was ordered.</summary>
public sealed class CameTooShort : Fault
{
    public override string Goes => "a unit comes two inches shorter than it was ordered";

    public override string Costs => "a unit that ends above the sill";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        unit.CameLonger = -50;
        return At(unit.Key, (unit.Key, UnitFacts.DeliveredHeight), (unit.Key, UnitFacts.OrderHeight)).Of(50, house.TapeError);
    }
}
