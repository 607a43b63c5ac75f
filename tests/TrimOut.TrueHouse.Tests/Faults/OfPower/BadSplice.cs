using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A splice holds by a few wires.</summary>
public sealed class BadSplice : Fault
{
    public override string Goes => "a splice holds by a few wires";

    public override string Costs => "a splice that gets worse, and then hot";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var slack = (unit.Kind.Running * unit.Cable!.InLine(Stage.Powered,
            house.WarmestCable)) - (unit.Kind.Running * unit.DrawsShare * unit.Cable.InLine(Stage.Powered, 22));
        var error = 2 * new Meter(house.Noise).Error(house.Supply());
        unit.Splices = (0.35 + slack + (2 * error)) / (unit.Kind.Running * unit.DrawsShare);
        return At(unit.Key, (unit.Key, RunFacts.LoadedVolts), (unit.Key, RunFacts.OpenVolts)).Of(0.35 + slack + (2 * error), slack + (2 * error));
    }
}
