using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The entry is marked farther back than the reveal is deep.</summary>
public sealed class EntryDeeperThanTheWall : Fault
{
    public override string Goes => "the entry is marked farther back than the opening is deep";

    public override string Costs => "a cable that comes out in the window frame or outside";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.EntryBack, house.Typed(unit.Opening.Depth + 60));
        return At(unit.Key, (unit.Key, UnitFacts.EntryBack), (unit.Opening.Tag, WindowFacts.Depth)).Of(60, house.TapeError);
    }
}
