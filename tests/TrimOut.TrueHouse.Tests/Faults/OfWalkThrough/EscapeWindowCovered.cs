using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>An escape window gets a covering that stays shut without power.</summary>
public sealed class EscapeWindowCovered : Fault
{
    public override string Goes => "an escape window gets a covering that stays shut without power";

    public override string Costs => "a way out that is closed in a fire";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        (unit.Opening.Escape, unit.Kind.WithoutPower) = (true, WithoutPower.StaysPut);
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.Escape), (unit.Kind.Name, CoveringKindFacts.WithoutPower));
    }
}
