using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>A unit comes with a dent.</summary>
public sealed class CameDamaged : Fault
{
    public override string Goes => "a unit comes with a dent";

    public override string Costs => "damage that is the crew's after a week";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        unit.Damage = "dent in the bar";
        return At(unit.Key, (unit.Key, UnitFacts.Damage));
    }
}
