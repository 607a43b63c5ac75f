using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>A unit comes in another colour than its neighbour.</summary>
public sealed class OtherFabricCame : Fault
{
    public override string Goes => "a unit comes in another color than its neighbor";

    public override string Costs => "a second delivery, or an owner who lives with it";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        unit.CameInItsFinish = false;
        return At(unit.Key, (unit.Key, UnitFacts.FinishAsOrdered));
    }
}
