using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Damp or a bruised jacket lets current through from one conductor to the other.</summary>
public sealed class LeakBetweenConductors : Fault
{
    public override string Goes => "damp or a bruised jacket lets current through from one conductor to the other";

    public override string Costs => "a unit that moves by itself, or a panel that switches off on a wet day";

    public override Stage In => Stage.Pulled;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Damages.Add(Damage.Short(unit.Cable.Metres * dice.Between(0.1, 0.9), Stage.Pulled, 20_000));
        return At(unit.Key, (unit.Key, RunFacts.FirstApart));
    }
}
