using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>A unit comes with its motor at the other end.</summary>
public sealed class MotorCameAtTheOtherEnd : Fault
{
    public override string Goes => "a unit comes with its motor at the other end";

    public override string Costs => "a lead in sight across the whole head";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.MotorAtOtherEnd = true;
        return At(unit.Key, (unit.Key, UnitFacts.LeadCameAt));
    }
}
