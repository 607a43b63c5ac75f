using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Two lengths are twisted together inside the wall.</summary>
public sealed class JointInTheWall : Fault
{
    public override string Goes => "two lengths are twisted together inside the wall";

    public override string Costs => "a joint that fails in a year, behind paint";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var all = unit.Cable!.Ohms(Stage.Sheets, house.CableAtFirstTest);
        var ohms = (all * 0.12) + 0.12 + house.LoopError(unit) + dice.Between(0.05, 0.6);
        unit.Cable.Damages.Add(Damage.Joint(unit.Cable.Metres * dice.Between(0.2, 0.8), Stage.Pulled, ohms));
        return At(unit.Key, [(unit.Key, RunFacts.FirstLoop), .. unit.Legs(), (unit.Key, RunFacts.TailAtWindow)]).Of(ohms, house.LoopError(unit));
    }
}
