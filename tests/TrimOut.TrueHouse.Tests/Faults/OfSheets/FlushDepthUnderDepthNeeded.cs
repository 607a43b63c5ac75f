using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>Depth needed and depth for flush are typed into each other's line.</summary>
public sealed class FlushDepthUnderDepthNeeded : Fault
{
    public override string Goes => "depth needed and depth for flush are typed into each other's line";

    public override string Costs => "a unit ordered for an opening that its brackets do not hold in";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { } kind || kind.DepthFlush - kind.DepthNeeded < 12)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.DepthFlush, house.Typed(kind.DepthNeeded - 8));
        return At(kind.Name, (kind.Name, CoveringKindFacts.DepthFlush), (kind.Name, CoveringKindFacts.DepthNeeded)).And(house.About(kind));
    }
}
