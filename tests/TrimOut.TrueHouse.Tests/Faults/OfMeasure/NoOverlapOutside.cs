using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An outside mount is planned no wider than its opening.</summary>
public sealed class NoOverlapOutside : Fault
{
    public override string Goes => "an outside mount is planned no wider than its opening";

    public override string Costs => "light down both sides";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["screw-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Opening.Units.Count == 1).One(dice) is not { } unit)
            return null;
        unit.Opening.MountOutside(house);
        unit.Opening.Overlap = 0;
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.OverlapEachSide)).Of(20, house.TapeError);
    }
}
