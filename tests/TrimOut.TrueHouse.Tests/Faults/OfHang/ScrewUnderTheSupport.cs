using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>The middle screw is driven where the centre support sits.</summary>
public sealed class ScrewUnderTheSupport : Fault
{
    public override string Goes => "the middle screw is driven where the center support sits";

    public override string Costs => "a bowed head rail";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.MiddleScrew is not null && u.Kind.CentreBracket > 20).One(dice) is not { } unit)
            return null;
        unit.NeedCentreSupport();
        unit.MiddleScrew = unit.Opening.Finished.Width / 2;
        return At(unit.Key, (unit.Key, UnitFacts.MiddleScrew), (unit.Kind.Name, CoveringKindFacts.CentreBracket))
            .Of(unit.Kind.CentreBracket / 2, (2 * house.TapeError) + 3);
    }
}
