using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A conductor is torn in the pull.</summary>
public sealed class CutAtThePull : Fault
{
    public override string Goes => "a conductor is torn in the pull";

    public override string Costs => "a dead window, and a wall to open";

    public override Stage In => Stage.Pulled;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Damages.Add(Damage.Cut(unit.Cable.Metres * dice.Between(0.1, 0.9), Stage.Pulled));
        return At(unit.Key, (unit.Key, RunFacts.FirstLoop));
    }
}
