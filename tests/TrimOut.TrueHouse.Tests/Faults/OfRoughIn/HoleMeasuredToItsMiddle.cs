using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A hole near the edge is measured to its middle.</summary>
public sealed class HoleMeasuredToItsMiddle : Fault
{
    public override string Goes => "a hole near the edge is measured to its middle";

    public override string Costs => "a drywall screw through the cable";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        (unit.Cable!.HoleEdge, unit.Cable.Plated) = (22, false);
        (unit.Cable.HoleDrill, unit.Cable.HoleReadToMiddle) = (house.OnTape(26), true);
        return At(unit.Key, (unit.Key, RunFacts.HoleEdge), (unit.Key, RunFacts.HoleTo), (unit.Key, RunFacts.HoleDrill));
    }
}
