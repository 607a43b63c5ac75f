using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>Two outside mounts on one wall want the same place.</summary>
public sealed class NeighboursOnOneWallCollide : Fault
{
    public override string Goes => "two outside mounts on one wall want the same place";

    public override string Costs => "one of two units that can't be hung";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["screw-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Select(u => u.Opening).Where(o => o.Units.Count == 1).GroupBy(o => o.Room).Where(r => r.Count() > 1).One(dice)?.Two(dice)
            is not var (left, right))
            return null;
        left.MountOutside(house);
        right.MountOutside(house);
        (left.MeetsRight, left.CornerAngle) = (right.Tag, 180);
        (left.ToCornerRight, right.ToCornerLeft) = (left.Overlap - 10, right.Overlap - 10);
        return At(left.Tag, (left.Tag, WindowFacts.MeetsRight), (left.Tag, WindowFacts.ToCornerRight), (right.Tag, WindowFacts.ToCornerLeft),
            (left.Tag, WindowFacts.OverlapEachSide), (right.Tag, WindowFacts.OverlapEachSide))
            .And(right.Tag).Of(20, 2 * house.TapeError);
    }
}
