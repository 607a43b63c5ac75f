using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A general cable goes from floor to floor in a multi-family building.</summary>
public sealed class CableNotListedBetweenFloors : Fault
{
    public override string Goes => "a general cable goes from floor to floor in a multi-family building";

    public override string Costs => "an inspector who has the wall opened";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Dwelling = Dwelling.MultiFamily;
        foreach (var cable in house.Cables.Where(c => c.Listing == CableListing.Cl2))
            cable.Listing = CableListing.Cl2r;
        unit.Cable!.Sheet.Listing = CableListing.Cl2;
        return At(unit.Key, (unit.Cable.Sheet.Name, CableTypeFacts.Listing), ($"{unit.Key}/3", LegFacts.Place), (Book.JobItself, HouseFacts.Dwelling));
    }
}
