using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>Two names at the hub differ in one letter.</summary>
public sealed class HubNamesAlmostAlike : Fault
{
    public override string Goes => "two names at the hub differ in one letter";

    public override string Costs => "the wrong unit moved, every evening";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Where(u => u.Opening.Units.Count == 1).Two(dice) is not var (first, second))
            return null;
        (first.HubName, second.HubName) = ("Garden left", "Garden lefft");
        return At(second.Key, (second.Key, UnitFacts.HubName), (first.Key, UnitFacts.HubName)).And(first.Key);
    }
}
