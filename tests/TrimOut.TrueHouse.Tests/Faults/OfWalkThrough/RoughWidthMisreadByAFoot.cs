using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The rough width is read a foot short.</summary>
public sealed class RoughWidthMisreadByAFoot : Fault
{
    public override string Goes => "the rough width is read a foot short";

    public override string Costs => "a tail that is a foot short, and an opening that grows";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.Rough.Width > 760).One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Opening.Tag, WindowFacts.RoughWidth, house.Typed(unit.Opening.Rough.Width - 304.8));
        return At(unit.Opening.Tag, (unit.Opening.Tag, WindowFacts.RoughWidth), (unit.Opening.Tag, WindowFacts.WidthTop)).Of(256, house.TapeError);
    }
}
