using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>A second window is given the tag of the first.</summary>
public sealed class TagTwice : Fault
{
    public override string Goes => "a second window is given the tag of the first";

    public override string Costs => "two boxes with one label";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Skip(1).One(dice) is not { } second)
            return null;
        var first = house.Openings[0];
        house.Slips.Writes(second.Tag, WindowFacts.Tag, first.Tag);
        return At(second.Tag, (second.Tag, WindowFacts.Tag)).And(first.Tag);
    }
}
