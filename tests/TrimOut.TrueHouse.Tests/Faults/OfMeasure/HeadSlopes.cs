using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The head of an opening was built sloping.</summary>
public sealed class HeadSlopes : Fault
{
    public override string Goes => "the head of an opening was built sloping";

    public override string Costs => "a unit that hangs out of level, or a wedge of light above it";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Where(o => !o.Outside).One(dice) is not { } opening)
            return null;
        opening.Finished = Polygon.Opening(opening.Finished.Width, opening.Finished.Height, slope: 15);
        return At(opening.Tag, (opening.Tag, WindowFacts.HeightLeft), (opening.Tag, WindowFacts.HeightRight)).Of(14, 2 * house.TapeError);
    }
}
