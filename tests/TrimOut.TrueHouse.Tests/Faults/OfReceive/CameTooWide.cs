using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>A unit comes a quarter inch wider than it was ordered.</summary>
public sealed class CameTooWide : Fault
{
    public override string Goes => "a unit comes a quarter inch wider than it was ordered";

    public override string Costs => "a week lost on the ladder";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        unit.CameWider = 6.35;
        return At(unit.Key, (unit.Key, UnitFacts.DeliveredWidth), (unit.Key, UnitFacts.OrderWidth)).Of(6.35, house.TapeError);
    }
}
