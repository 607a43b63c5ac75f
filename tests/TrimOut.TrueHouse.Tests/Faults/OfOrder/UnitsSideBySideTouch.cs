using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>Two units side by side are ordered with less between them than their sheet asks for.</summary>
public sealed class UnitsSideBySideTouch : Fault
{
    public override string Goes => "two units side by side are ordered with less between them than their sheet asks for";

    public override string Costs => "two fabrics that tear at each other";

    public override Stage In => Stage.Sized;

    public override IReadOnlyList<string> DoNotNameIt => ["order-past-opening", "order-off-measures"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        var (unit, kind) = (opening.Units[0], opening.Units[0].Kind);
        var left = opening.Finished.Width - (2 * kind.EndClear) - opening.Units.Sum(u => u.PartWidth);
        house.Slips.Writes(unit.Key, UnitFacts.OrderWidth, house.Typed(unit.PartWidth + left - ((opening.Units.Count - 1) * kind.GapLeast) + 4));
        return At(opening.Tag, (unit.Key, UnitFacts.OrderWidth), (opening.Tag, WindowFacts.WidthTop), (kind.Name, CoveringKindFacts.GapBetween))
            .Of(4, house.TapeError);
    }
}
