using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A staple or a plate goes through the jacket to one conductor.</summary>
public sealed class ConductorTouchesTheBuilding : Fault
{
    public override string Goes => "a staple or a plate goes through the jacket to one conductor";

    public override string Costs => "one more such fault anywhere, and a panel switches off";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Damages.Add(Damage.Touch(unit.Cable.Metres * dice.Between(0.1, 0.9), Stage.Pulled, dice.Between(0, 900)));
        return At(unit.Key, (unit.Key, RunFacts.FirstToFrame));
    }
}
