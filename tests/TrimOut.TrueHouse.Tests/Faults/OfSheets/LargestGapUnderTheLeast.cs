using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The least and the largest gap between units are typed into each other's line.</summary>
public sealed class LargestGapUnderTheLeast : Fault
{
    public override string Goes => "the least and the largest gap between units are typed into each other's line";

    public override string Costs => "no order width can be right, and one of two rules is waived for good";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { } kind)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.GapBetween, house.Typed(kind.GapMost));
        house.Slips.Writes(kind.Name, CoveringKindFacts.GapMost, house.Typed(kind.GapLeast));
        return At(kind.Name, (kind.Name, CoveringKindFacts.GapBetween), (kind.Name, CoveringKindFacts.GapMost)).And(house.About(kind));
    }
}
