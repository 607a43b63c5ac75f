using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The width that this maker asks for is the made width, and it is ordered like an opening.</summary>
public sealed class MadeWidthOrderedLikeAnOpening : Fault
{
    public override string Goes => "the width that this maker asks for is the made width, and it is ordered like an opening";

    public override string Costs => "every unit of the kind jams in its opening";

    public override Stage In => Stage.Sized;

    public override IReadOnlyList<string> DoNotNameIt => ["order-off-measures"];

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        unit.Kind.MadeWidth = true;
        house.Slips.Writes(unit.Key, UnitFacts.OrderWidth, house.Typed(unit.Opening.Finished.PlumbWidth));
        return At(unit.Key, (unit.Key, UnitFacts.OrderWidth), (unit.Kind.Name, CoveringKindFacts.OrderedInside), (unit.Opening.Tag, WindowFacts.WidthTop))
            .Of(unit.Kind.Deduction, unit.Opening.Finished.Width - unit.Opening.Finished.PlumbWidth + (2 * house.TapeError));
    }
}
