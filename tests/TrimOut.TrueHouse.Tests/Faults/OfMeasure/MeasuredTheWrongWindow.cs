using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The figures of one window are written to another.</summary>
public sealed class MeasuredTheWrongWindow : Fault
{
    public override string Goes => "the figures of one window are written to another";

    public override string Costs => "a unit that belongs to another window";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["tail-under-half-width", "tail-under-whole-width", "tail-short-of-motor",
        "gap-between-units-too-large", "gap-between-units-too-small", "parts-past-opening", "head-room-short", "stack-in-the-way",
        "entry-under-centre-support", "entry-under-middle-screw", "screw-under-centre-support", "roll-past-head-cover"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Two(dice) is not var (right, wrong) || Math.Abs(right.Finished.Width - wrong.Finished.Width) < 90)
            return null;
        right.MeasuredAs = wrong.Finished;
        return At(right.Tag, (right.Tag, WindowFacts.RoughWidth), (right.Tag, WindowFacts.WidthTop)).Of(Math.Abs(right.Rough.Width - wrong.Rough.Width), 60);
    }
}
