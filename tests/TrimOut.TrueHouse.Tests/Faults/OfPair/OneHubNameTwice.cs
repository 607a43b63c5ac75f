using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>Two units are given one name at the hub.</summary>
public sealed class OneHubNameTwice : Fault
{
    public override string Goes => "two units are given one name at the hub";

    public override string Costs => "a voice that moves the wrong one";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Two(dice) is not var (first, second))
            return null;
        second.HubName = first.HubName;
        return At(second.Key, (second.Key, UnitFacts.HubName), (first.Key, UnitFacts.HubName)).And(first.Key);
    }
}
