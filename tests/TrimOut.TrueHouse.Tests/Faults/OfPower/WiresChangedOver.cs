using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Plus and minus are changed over.</summary>
public sealed class WiresChangedOver : Fault
{
    public override string Goes => "plus and minus are changed over";

    public override string Costs => "a motor that runs the wrong way, or is damaged";

    public override Stage In => Stage.Powered;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.WiresChangedOver = true;
        return At(unit.Key, (unit.Key, RunFacts.Polarity));
    }
}
