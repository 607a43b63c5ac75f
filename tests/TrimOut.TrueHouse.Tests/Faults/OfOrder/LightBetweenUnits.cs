using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>Two units side by side are ordered with a strip of light between them.</summary>
public sealed class LightBetweenUnits : Fault
{
    public override string Goes => "two units side by side are ordered with a strip of light between them";

    public override string Costs => "a strip of light every morning";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        var unit = opening.Units[0];
        house.Slips.Writes(unit.Key, UnitFacts.OrderWidth, house.Typed(unit.PartWidth - (opening.Units.Count * unit.Kind.GapMost) - 10));
        return At(opening.Tag, (unit.Key, UnitFacts.OrderWidth), (opening.Tag, WindowFacts.WidthTop), (unit.Kind.Name, CoveringKindFacts.GapMost))
            .Of(10, house.TapeError);
    }
}
