using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>A setback is written that is more than the reveal is deep.</summary>
public sealed class SetbackDeeperThanTheReveal : Fault
{
    public override string Goes => "a setback is written that is more than the opening is deep";

    public override string Costs => "brackets that are not where the drawing has them";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.InTheWay == "none").One(dice) is not { } unit)
            return null;
        unit.Setback = unit.Opening.Depth + 40;
        return At(unit.Key, (unit.Key, UnitFacts.Setback), (unit.Opening.Tag, WindowFacts.Depth)).Of(40, 2 * house.TapeError);
    }
}
