using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The depth of a reveal is typed as so many feet as it has inches, deeper than any wall.</summary>
public sealed class DepthDeeperThanAnyWall : Fault
{
    public override string Goes => "the depth of an opening is typed as so many feet as it has inches, deeper than any wall";

    public override string Costs => "brackets for an opening that is not there";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.Depth > 127).One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Opening.Tag, WindowFacts.Depth, house.Typed(Math.Round(unit.Opening.Depth / 25.4) * 304.8));
        return At(unit.Opening.Tag, (unit.Opening.Tag, WindowFacts.Depth));
    }
}
