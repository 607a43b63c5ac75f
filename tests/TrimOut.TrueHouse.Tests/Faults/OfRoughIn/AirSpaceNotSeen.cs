using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A leg goes through a return-air space that nobody takes for one.</summary>
public sealed class AirSpaceNotSeen : Fault
{
    public override string Goes => "a leg goes through a return-air space that nobody takes for one";

    public override string Costs => "an unlisted cable in moving air";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Cable!.Sheet.Listing is CableListing.Cl2r or CableListing.Cl3r or CableListing.Cmr).One(dice) is not { } unit)
            return null;
        unit.Cable!.Legs[1].Around = CablePlace.AirHandlingSpace;
        house.Slips.Writes($"{unit.Key}/2", LegFacts.Place, "in-wall");
        return At(unit.Key, ($"{unit.Key}/2", LegFacts.AirMoves));
    }
}
