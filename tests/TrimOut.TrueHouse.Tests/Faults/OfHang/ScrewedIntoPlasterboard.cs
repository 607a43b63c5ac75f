using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>Brackets are screwed into plasterboard alone.</summary>
public sealed class ScrewedIntoPlasterboard : Fault
{
    public override string Goes => "brackets are screwed into drywall alone";

    public override string Costs => "a unit that comes down";

    public override Stage In => Stage.Hung;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        unit.FixedInto = FixedInto.BoardAlone;
        return At(unit.Key, (unit.Key, UnitFacts.FixedInto));
    }
}
