using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>Both jambs of an opening bow in at the middle.</summary>
public sealed class JambsBowIn : Fault
{
    public override string Goes => "both jambs of an opening bow in at the middle";

    public override string Costs => "a unit that rubs at the middle of its way";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Where(o => !o.Outside).One(dice) is not { } opening)
            return null;
        opening.Finished = Polygon.Opening(opening.Finished.Width + 12, opening.Finished.Height, bow: 6);
        return At(opening.Tag, (opening.Tag, WindowFacts.WidthTop), (opening.Tag, WindowFacts.WidthMiddle)).Of(11, 2 * house.TapeError);
    }
}
