using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A splice is twisted and not clamped.</summary>
public sealed class PoorSplice : Fault
{
    public override string Goes => "a splice is twisted and not clamped";

    public override string Costs => "a splice that gets worse";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var slack = (unit.Kind.Running * unit.Cable!.InLine(Stage.Powered,
            house.WarmestCable)) - (unit.Kind.Running * unit.DrawsShare * unit.Cable.InLine(Stage.Powered, 22));
        var error = 2 * new Meter(house.Noise).Error(house.Supply());
        unit.Splices = (slack + (2 * error) + 0.02) / (unit.Kind.Running * unit.DrawsShare);
        return At(unit.Key, (unit.Key, RunFacts.LoadedVolts), (unit.Key, RunFacts.OpenVolts)).Of(slack + (2 * error) + 0.02, slack + (2 * error));
    }
}
