using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The window around the corner is written with the tag of one in another room.</summary>
public sealed class CornerOfAnotherRoom : Fault
{
    public override string Goes => "the window around the corner is written with the tag of one in another room";

    public override string Costs => "two heads that run into each other where nobody looked";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => !o.LeftOut).Two(dice) is not var (left, right) || left.Room == right.Room)
            return null;
        (left.MeetsRight, left.CornerAngle) = (right.Tag, 180);
        (left.ToCornerRight, right.ToCornerLeft) = (400, 400);
        return At(left.Tag, (left.Tag, WindowFacts.MeetsRight));
    }
}
