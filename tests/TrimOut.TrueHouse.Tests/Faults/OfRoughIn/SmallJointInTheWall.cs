using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Two lengths are clamped together inside the wall, fairly well.</summary>
public sealed class SmallJointInTheWall : Fault
{
    public override string Goes => "two lengths are clamped together inside the wall, fairly well";

    public override string Costs => "a joint that fails in some years, behind paint";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Blind(Stage.Pulled).One(dice) is not { } blind)
            return null;
        var unit = blind.Unit;
        unit.Cable!.Damages.Add(Damage.Joint(unit.Cable.Metres / 2, Stage.Pulled, blind.Ohms));
        return At(unit.Key, [(unit.Key, RunFacts.FirstLoop), .. unit.Legs(), (unit.Key, RunFacts.TailAtWindow)]).Of(blind.Ohms, blind.Sure);
    }
}
