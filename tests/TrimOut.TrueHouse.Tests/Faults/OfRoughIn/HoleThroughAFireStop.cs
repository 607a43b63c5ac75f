using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A cable goes through a fire-stopped floor and the hole is left open.</summary>
public sealed class HoleThroughAFireStop : Fault
{
    public override string Goes => "a cable goes through a fire-stopped floor and the hole is left open";

    public override string Costs => "a fire that goes from floor to floor, and an inspector who sees it";

    public override Stage In => Stage.Routed;

    public override string WouldShow => "for each leg, the penetration: what is gone through, who seals it, and that it was seen";

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Wired.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
