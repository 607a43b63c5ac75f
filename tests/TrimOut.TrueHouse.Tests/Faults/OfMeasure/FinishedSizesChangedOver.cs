using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>Width and height are written into each other's column.</summary>
public sealed class FinishedSizesChangedOver : Fault
{
    public override string Goes => "width and height are written into each other's column";

    public override string Costs => "a unit that hangs nowhere";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["tail-under-half-width", "tail-under-whole-width", "tail-short-of-motor",
        "entry-under-centre-support", "entry-under-middle-screw", "screw-under-centre-support", "stack-in-the-way", "stack-over-glass", "roll-past-head-cover"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => Math.Abs(u.Opening.Finished.Width - u.Opening.Finished.Height) > 250).One(dice) is not { } unit)
            return null;
        var tag = unit.Opening.Tag;
        var shape = unit.Opening.Finished;
        unit.Opening.MeasuredAs = Polygon.Opening(shape.Height, shape.Width);
        return At(tag, (tag, WindowFacts.RoughWidth), (tag, WindowFacts.RoughHeight), (tag, WindowFacts.WidthTop), (tag, WindowFacts.HeightLeft)).Of(250, 60);
    }
}
