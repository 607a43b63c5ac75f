using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An opening is measured rough, before plaster and trim are in.</summary>
public sealed class MeasuredBeforeTheTrim : Fault
{
    public override string Goes => "an opening is measured rough, before plaster and trim are in";

    public override string Costs => "a unit that is as wide as the bare framing";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        var trim = unit.Opening.Rough.Width - unit.Opening.Finished.Width;
        unit.Opening.MeasuredAs = unit.Opening.Rough = Polygon.Opening(unit.Opening.Rough.Width, unit.Opening.Rough.Height);
        return At(unit.Opening.Tag, (unit.Opening.Tag, WindowFacts.RoughWidth), (unit.Opening.Tag, WindowFacts.WidthTop),
            (unit.Opening.Tag, WindowFacts.HeightLeft)).Of(trim, 2 * house.TapeError);
    }
}
