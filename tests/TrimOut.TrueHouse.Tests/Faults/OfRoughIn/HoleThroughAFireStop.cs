using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A cable goes through a fire-stopped floor and the hole is left open.</summary>
public sealed class HoleThroughAFireStop : Fault
{
    public override string Goes => "a cable goes through a fire-stopped floor and the hole is left open";

    public override string Costs => "a fire that goes from floor to floor, and an inspector who sees it";

    public override Stage In => Stage.Pulled;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var (leg, at) = (unit.Cable!.Legs[2], $"{unit.Key}/3");
        (leg.FireBarrier, leg.SealedBy) = (true, null);
        return At(unit.Key, (at, LegFacts.FireBarrier), (unit.Key, RunFacts.FirstLoop));
    }
}
