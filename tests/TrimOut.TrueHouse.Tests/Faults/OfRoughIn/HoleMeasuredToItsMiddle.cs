using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A hole near the edge is measured to its middle.</summary>
public sealed class HoleMeasuredToItsMiddle : Fault
{
    public override string Goes => "a hole near the edge is measured to its middle";

    public override string Costs => "a drywall screw through the cable";

    public override Stage In => Stage.Pulled;

    public override string WouldShow => "the width of the drill beside the distance, and to which of the two the distance is taken";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        (unit.Cable!.HoleEdge, unit.Cable.Plated) = (22, false);
        house.Slips.Writes(unit.Key, RunFacts.HoleEdge, house.Typed(22 + 13));
        return Unseen(unit.Key);
    }
}
