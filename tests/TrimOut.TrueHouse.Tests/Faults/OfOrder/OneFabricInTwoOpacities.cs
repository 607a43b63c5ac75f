using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>One fabric in one color is ordered with another opacity in another room.</summary>
public sealed class OneFabricInTwoOpacities : Fault
{
    public override string Goes => "one fabric in one color is ordered with another opacity in another room";

    public override string Costs => "a bedroom that is not dark, or a unit made once more";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => !o.LeftOut && o.Units.Count == 1).GroupBy(o => (o.Units[0].Fabric, o.Units[0].Colour)).Where(c => c.Count() > 1).One(dice)
            ?.Two(dice) is not var (first, second))
            return null;
        var (unit, other) = (first.Units[0], second.Units[0]);
        house.Slips.Writes(unit.Key, UnitFacts.Opacity, unit.Opacity == Opacity.Blackout ? "sheer" : "blackout");
        return At(first.Tag, (unit.Key, UnitFacts.Opacity), (other.Key, UnitFacts.Opacity)).And(second.Tag);
    }
}
