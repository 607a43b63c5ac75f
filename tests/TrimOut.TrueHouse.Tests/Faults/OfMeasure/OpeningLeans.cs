using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An opening was built leaning.</summary>
public sealed class OpeningLeans : Fault
{
    public override string Goes => "an opening was built leaning";

    public override string Costs => "a wedge of light beside the unit, or a unit that jams";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Where(o => !o.Outside && o.Finished.Width > o.Finished.Height * 0.6).One(dice) is not { } opening)
            return null;
        opening.Finished = Polygon.Opening(opening.Finished.Width, opening.Finished.Height, lean: 16);
        return At(opening.Tag, (opening.Tag, WindowFacts.DiagonalDown), (opening.Tag, WindowFacts.DiagonalUp), (opening.Tag, WindowFacts.WidthTop))
            .Of(opening.Finished.DiagonalUp - opening.Finished.DiagonalDown, 2 * house.TapeError);
    }
}
