using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>The volts "while it moves" are read while the unit stands still.</summary>
public sealed class ReadWhileItStoodStill : Fault
{
    public override string Goes => "loaded volts are read while the unit stands still";

    public override string Costs => "a splice that nobody has tested under load";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, RunFacts.LoadedVolts, new Meter(house.Noise).Volts(unit.Panel!.Volts, unit.Key, "open volts"));
        return At(unit.Key, (unit.Key, RunFacts.LoadedVolts), (unit.Key, RunFacts.OpenVolts))
            .Of(0.4 * unit.Kind.Running * unit.Cable!.InLine(Stage.Powered, house.WarmestCable), 0.05);
    }
}
