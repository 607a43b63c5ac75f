using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A riser cable goes through a space that moves air.</summary>
public sealed class CableNotListedInAnAirSpace : Fault
{
    public override string Goes => "a riser cable goes through a space that moves air";

    public override string Costs => "smoke through the whole building, and an inspector who has the wall opened";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Cable!.Sheet.Listing is CableListing.Cl2r or CableListing.Cl3r or CableListing.Cmr).One(dice) is not { } unit)
            return null;
        unit.Cable!.Legs[1].Around = CablePlace.AirHandlingSpace;
        return At(unit.Key, (unit.Cable.Sheet.Name, CableTypeFacts.Listing), ($"{unit.Key}/2", LegFacts.Place));
    }
}
