using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>Nobody looked at cords and chains, and the step is marked all the same.</summary>
public sealed class CordsNotLookedAt : Fault
{
    public override string Goes => "nobody looked at cords and chains, and the step is marked all the same";

    public override string Costs => "a loop that nobody saw";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, UnitFacts.CordConfirmedBy);
        return From(Stage.Hung, unit.Key);
    }
}
