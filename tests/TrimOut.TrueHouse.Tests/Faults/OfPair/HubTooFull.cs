using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A hub has one device more than it takes.</summary>
public sealed class HubTooFull : Fault
{
    public override string Goes => "a hub has one device more than it takes";

    public override string Costs => "the last unit can't be paired, on the last evening";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.HubSheets[0].Most = house.Units.Count() + house.Remotes.Count - 1;
        return At("Hub", ("Hub", HubFacts.Type), (house.HubSheets[0].Name, HubTypeFacts.Devices), (house.Units.Last().Key, UnitFacts.Hub));
    }
}
