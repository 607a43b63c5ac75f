using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A leg goes through a floor, and is written as one that goes up inside a wall.</summary>
public sealed class FloorLegSaidToGoUp : Fault
{
    public override string Goes => "a leg goes through a floor, and is written as one that goes up inside a wall";

    public override string Costs => "a cable that is not listed for its way, and nobody asks";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => house.Wired.Any(o => o != u && o.Opening.Room.Floor == u.Opening.Room.Floor)).One(dice) is not { } unit)
            return null;
        house.Slips.Writes($"{unit.Key}/3", LegFacts.Direction, "up");
        house.Slips.Writes($"{unit.Key}/3", LegFacts.Place, "in-wall");
        return At(unit.Key, ($"{unit.Key}/3", LegFacts.Direction), ($"{unit.Key}/3", LegFacts.Place));
    }
}
