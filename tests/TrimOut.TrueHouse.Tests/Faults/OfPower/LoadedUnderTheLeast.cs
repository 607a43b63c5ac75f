using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A weak supply and a long cable together leave a unit less than it needs.</summary>
public sealed class LoadedUnderTheLeast : Fault
{
    public override string Goes => "a weak supply and a long cable together leave a unit less than it needs";

    public override string Costs => "a motor that stalls on a cold morning";

    public override Stage In => Stage.Powered;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var worst = house.Wired.MaxBy(u => u.Draws() * u.Cable!.InLine(Stage.Powered, house.WarmestCable))!;
        var (volts, drop) = (house.Supply(), worst.Draws() * worst.Cable!.InLine(Stage.Powered, house.WarmestCable));
        foreach (var unit in house.Wired)
            unit.Kind.LeastVolts = Math.Min(unit.Kind.LeastVolts, Math.Floor((volts - drop) * 0.99 * 100) / 100);
        worst.Kind.LeastVolts = Math.Floor((volts - drop) * 0.995 * 100) / 100;
        foreach (var panel in house.Panels)
            panel.Volts = volts * 0.915;
        var loaded = (volts * 0.915) - (worst.Kind.Running * worst.DrawsShare * worst.Cable.InLine(Stage.Powered, 22));
        var under = worst.Kind.LeastVolts - loaded;
        return under <= 0 ? null : At(worst.Key, (worst.Key, RunFacts.LoadedVolts), (worst.Kind.Name, CoveringKindFacts.LeastVolts))
            .Of(under, new Meter(house.Noise).Error(volts));
    }
}
