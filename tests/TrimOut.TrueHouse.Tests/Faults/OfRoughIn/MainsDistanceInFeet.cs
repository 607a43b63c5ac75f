using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>The distance to mains wiring is typed in feet where inches were read.</summary>
public sealed class MainsDistanceInFeet : Fault
{
    public override string Goes => "the distance to mains wiring is typed in feet where inches were read";

    public override string Costs => "a cable beside mains wiring that nobody looks at again";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, RunFacts.MainsDistance, house.Typed(24 * 304.8));
        return At(unit.Key, (unit.Key, RunFacts.MainsDistance));
    }
}
