using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>A loop of chain or cable hangs where a child reaches it.</summary>
public sealed class CordWithinReach : Fault
{
    public override string Goes => "a loop of chain or cable hangs where a child reaches it";

    public override string Costs => "a child that is strangled";

    public override Stage In => Stage.Hung;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        unit.FreeCord = 560;
        return At(unit.Key, (unit.Key, UnitFacts.FreeCord)).Of(unit.FreeCord - 203.2, house.TapeError);
    }
}
