using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A saw goes through a cable.</summary>
public sealed class CableCutInTheWall : Fault
{
    public override string Goes => "a saw goes through a cable";

    public override string Costs => "a dead window, and a wall to open";

    public override Stage In => Stage.CloseIn;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Damages.Add(Damage.Cut(unit.Cable.Metres * dice.Between(0.1, 0.9), Stage.CloseIn));
        return At(unit.Key, (unit.Key, RunFacts.SecondLoop));
    }
}
