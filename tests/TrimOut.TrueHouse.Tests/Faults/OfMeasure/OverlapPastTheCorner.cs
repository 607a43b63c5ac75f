using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An outside mount is planned to reach past the corner of its wall.</summary>
public sealed class OverlapPastTheCorner : Fault
{
    public override string Goes => "an outside mount is planned to reach past the corner of its wall";

    public override string Costs => "a unit that is as wide as the wall and a hand more";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["screw-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Opening.Units.Count == 1).One(dice) is not { } unit)
            return null;
        unit.Opening.MountOutside(house);
        unit.Opening.ToCornerRight = unit.Opening.Overlap - 20;
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.OverlapEachSide), (unit.Opening.Tag, WindowFacts.ToCornerRight)).Of(20, house.TapeError);
    }
}
