using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>The meter shows a minus sign, and the polarity is written as right.</summary>
public sealed class MinusSignNotNoticed : Fault
{
    public override string Goes => "the meter shows a minus sign, and the polarity is written as right";

    public override string Costs => "a motor that runs the wrong way, or is damaged";

    public override Stage In => Stage.Powered;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, RunFacts.OpenVolts, read => "-" + read);
        return At(unit.Key, (unit.Key, RunFacts.OpenVolts));
    }
}
