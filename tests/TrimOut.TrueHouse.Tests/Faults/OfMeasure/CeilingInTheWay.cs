using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An outside mount starts higher than there is wall.</summary>
public sealed class CeilingInTheWay : Fault
{
    public override string Goes => "an outside mount starts higher than there is wall";

    public override string Costs => "brackets in a molding";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["screw-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Opening.Units.Count == 1).One(dice) is not { } unit)
            return null;
        unit.Opening.MountOutside(house);
        unit.Opening.WallAbove = unit.Opening.HeadAbove - 15;
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.HeadAbove), (unit.Opening.Tag, WindowFacts.WallAbove)).Of(15, house.TapeError);
    }
}
