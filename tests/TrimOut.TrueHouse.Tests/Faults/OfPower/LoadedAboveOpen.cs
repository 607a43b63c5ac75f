using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Loaded and open-circuit volts are typed into each other's field.</summary>
public sealed class LoadedAboveOpen : Fault
{
    public override string Goes => "loaded and open-circuit volts are typed into each other's field";

    public override string Costs => "a bad splice that looks like a good one";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, RunFacts.LoadedVolts, Installer.Number(Math.Round(unit.Panel!.Volts * 1.05, 2)));
        return At(unit.Key, (unit.Key, RunFacts.LoadedVolts), (unit.Key, RunFacts.OpenVolts))
            .Of(unit.Panel.Volts * 0.05, 2 * new Meter(house.Noise).Error(unit.Panel.Volts));
    }
}
