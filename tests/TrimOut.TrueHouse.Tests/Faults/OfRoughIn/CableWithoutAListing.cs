using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A cable without any marking on its jacket is pulled.</summary>
public sealed class CableWithoutAListing : Fault
{
    public override string Goes => "a cable without any marking on its jacket is pulled";

    public override string Costs => "all of it pulled again";

    public override Stage In => Stage.Routed;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Sheet.Listing = CableListing.NotListed;
        return At(unit.Key, (unit.Cable.Sheet.Name, CableTypeFacts.Listing), (unit.Key, RunFacts.Cable));
    }
}
