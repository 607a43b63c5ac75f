using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>Brackets are fixed so far back that the unit meets the handle.</summary>
public sealed class BracketsTooFarBack : Fault
{
    public override string Goes => "brackets are fixed so far back that the unit meets the handle";

    public override string Costs => "a bar that catches, and a motor that tears";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.InTheWay != "none").One(dice) is not { } unit)
            return null;
        unit.Setback = unit.Opening.Depth - unit.Opening.StandsOut - unit.Kind.BracketBack + 12;
        return At(unit.Key, (unit.Key, UnitFacts.Setback), (unit.Opening.Tag, WindowFacts.InTheWayDepth)).Of(12, 2 * house.TapeError);
    }
}
