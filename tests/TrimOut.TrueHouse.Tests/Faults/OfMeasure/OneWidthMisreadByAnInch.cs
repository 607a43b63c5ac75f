using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>One of three widths is read an inch too large.</summary>
public sealed class OneWidthMisreadByAnInch : Fault
{
    public override string Goes => "one of three widths is read an inch too large";

    public override string Costs => "an order that is held up, or a unit of the wrong width";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Where(o => !o.Outside).One(dice) is not { } opening)
            return null;
        house.Slips.Writes(opening.Tag, WindowFacts.WidthMiddle, house.Typed(opening.Finished.WidthAt(opening.Finished.Height / 2) + 25.4));
        return At(opening.Tag, (opening.Tag, WindowFacts.WidthTop), (opening.Tag, WindowFacts.WidthMiddle)).Of(25.4, 2 * house.TapeError);
    }
}
