using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An opening was built narrower at the head.</summary>
public sealed class HeadNarrowerThanSill : Fault
{
    public override string Goes => "an opening was built narrower at the head";

    public override string Costs => "a unit that jams at the head";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Where(o => !o.Outside).One(dice) is not { } opening)
            return null;
        opening.Finished = Polygon.Opening(opening.Finished.Width, opening.Finished.Height, taper: 14);
        return At(opening.Tag, (opening.Tag, WindowFacts.WidthTop), (opening.Tag, WindowFacts.WidthBottom)).Of(13, 2 * house.TapeError);
    }
}
