using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Somebody says that the hole in a fire-stopped floor is sealed, and nobody looked.</summary>
public sealed class SealNotSeen : Fault
{
    public override string Goes => "somebody says that the hole in a fire-stopped floor is sealed, and nobody looked";

    public override string Costs => "a seal that is missing when the inspector looks";

    public override Stage In => Stage.Pulled;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var (leg, at) = (unit.Cable!.Legs[2], $"{unit.Key}/3");
        (leg.FireBarrier, leg.SealedBy, leg.SealSeen) = (true, "Somebody of the builder's", false);
        return At(unit.Key, (at, LegFacts.FireBarrier), (at, LegFacts.SealedBy), (unit.Key, RunFacts.FirstLoop));
    }
}
