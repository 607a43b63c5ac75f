using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Two lengths are soldered together inside the wall.</summary>
public sealed class SoundJointInTheWall : Fault
{
    public override string Goes => "two lengths are soldered together inside the wall";

    public override string Costs => "a joint that nobody can reach, against the code and the sheet";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Damages.Add(Damage.Joint(unit.Cable.Metres / 2, Stage.Pulled, 0.004));
        unit.Cable.Joined = true;
        return At(unit.Key, (unit.Key, RunFacts.OnePiece));
    }
}
