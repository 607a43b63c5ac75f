using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>A window that is to be covered from outside its reveal is typed as an inside mount.</summary>
public sealed class OutsideMountTypedInside : Fault
{
    public override string Goes => "an outside mount is typed as an inside mount, and its overlap is measured all the same";

    public override string Costs => "a unit that is both overlaps too narrow, and hangs in nothing";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Where(o => o.Outside && o.Overlap > 10).One(dice) is not { } opening)
            return null;
        house.Slips.Writes(opening.Tag, WindowFacts.Mount, "inside");
        return At(opening.Tag, (opening.Tag, WindowFacts.Mount), (opening.Tag, WindowFacts.OverlapEachSide));
    }
}
