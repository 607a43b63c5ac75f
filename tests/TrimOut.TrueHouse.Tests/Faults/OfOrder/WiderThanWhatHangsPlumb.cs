using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>A unit is ordered by the smallest width of an opening that leans a little, and what hangs plumb in it is narrower.</summary>
public sealed class WiderThanWhatHangsPlumb : Fault
{
    public override string Goes => "a unit is ordered by the smallest width of an opening that leans a little, and what hangs plumb in it is narrower";

    public override string Costs => "a unit that touches one jamb at the head and the other at the sill";

    public override Stage In => Stage.Sized;

    public override IReadOnlyList<string> DoNotNameIt => ["out-of-square", "order-off-measures", "order-past-opening"];

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.Finished.Width is > 700
            && u.Opening.Finished.Width > u.Opening.Finished.Height * 0.62).One(dice) is not { } unit)
            return null;
        var (width, height) = (unit.Opening.Finished.Width, unit.Opening.Finished.Height);
        unit.Opening.Finished = Polygon.Opening(width, height, lean: 2.2 * Math.Sqrt((width * width) + (height * height)) / width);
        (unit.Kind.Deduction, unit.Kind.Step) = (0, house.OnTape(1.6));
        house.Slips.Writes(unit.Key, UnitFacts.OrderWidth, house.Typed(width));
        return At(unit.Key, (unit.Key, UnitFacts.OrderWidth), (unit.Opening.Tag, WindowFacts.DiagonalDown), (unit.Opening.Tag, WindowFacts.DiagonalUp))
            .Of(unit.Opening.Finished.DiagonalUp - unit.Opening.Finished.DiagonalDown, 2 * house.TapeError);
    }
}
