using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A tall narrow opening was built leaning, and its diagonals hardly show it.</summary>
public sealed class TallOpeningLeans : Fault
{
    public override string Goes => "a tall narrow opening was built leaning, and its diagonals hardly show it";

    public override string Costs => "a unit that jams at the head";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.Finished.Width < u.Opening.Finished.Height * 0.62).One(dice) is not { } unit)
            return null;
        var (width, height) = (unit.Opening.Finished.Width, unit.Opening.Finished.Height);
        unit.Opening.Finished = Polygon.Opening(width, height, lean: 2.2 * Math.Sqrt((width * width) + (height * height)) / width);
        unit.Kind.Deduction = 0;
        return At(unit.Opening.Tag, (unit.Opening.Tag, WindowFacts.DiagonalDown), (unit.Opening.Tag, WindowFacts.DiagonalUp),
            (unit.Opening.Tag, WindowFacts.WidthTop))
            .Of(unit.Opening.Finished.DiagonalUp - unit.Opening.Finished.DiagonalDown, 2 * house.TapeError);
    }
}
