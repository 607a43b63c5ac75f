using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>Two outside mounts run into each other in a corner.</summary>
public sealed class UnitsMeetInACorner : Fault
{
    public override string Goes => "two outside mounts run into each other in a corner";

    public override string Costs => "one of two units that can't be hung";

    public override Stage In => Stage.Sized;

    public override IReadOnlyList<string> DoNotNameIt => ["screw-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Select(u => u.Opening).Where(o => o.Units.Count == 1).GroupBy(o => o.Room).Where(r => r.Count() > 1).One(dice)?.Two(dice)
            is not var (left, right))
            return null;
        left.MountOutside(house);
        right.MountOutside(house);
        (left.MeetsRight, left.CornerAngle) = (right.Tag, 90);
        (left.ToCornerRight, right.ToCornerLeft) = (left.Overlap + 6, right.Overlap + 6);
        return At(left.Tag, (left.Tag, WindowFacts.ToCornerRight), (right.Tag, WindowFacts.ToCornerLeft), (left.Units[0].Key, UnitFacts.HeadCover),
            (right.Units[0].Key, UnitFacts.HeadCover))
            .And(right.Tag).Of(12, 2 * house.TapeError);
    }
}
