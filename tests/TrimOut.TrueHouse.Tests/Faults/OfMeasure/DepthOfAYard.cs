using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The depth of a reveal is typed a yard deep, deeper than its wall.</summary>
public sealed class DepthOfAYard : Fault
{
    public override string Goes => "the depth of an opening is typed a yard deep, deeper than its wall";

    public override string Costs => "brackets for an opening that is not there";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Opening.Tag, WindowFacts.Depth, house.Typed(914.4));
        return At(unit.Opening.Tag, (unit.Opening.Tag, WindowFacts.Depth)).Of(150, house.TapeError);
    }
}
