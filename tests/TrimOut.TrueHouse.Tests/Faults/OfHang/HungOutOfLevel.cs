using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>A unit is hung out of level.</summary>
public sealed class HungOutOfLevel : Fault
{
    public override string Goes => "a unit is hung out of level";

    public override string Costs => "a fabric that runs to one side and frays";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        unit.OutOfLevel = dice.Between(5, 12);
        return At(unit.Key, (unit.Key, UnitFacts.OutOfLevel)).Of(unit.OutOfLevel - 3.2, house.TapeError);
    }
}
