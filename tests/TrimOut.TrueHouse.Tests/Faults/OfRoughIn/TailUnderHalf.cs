using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A tail is left that is shorter than half the window.</summary>
public sealed class TailUnderHalf : Fault
{
    public override string Goes => "a tail is left that is shorter than half the window";

    public override string Costs => "a splice inside the opening, or a new cable";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        unit.Cable!.TailAtWindow = unit.Opening.Finished.Width * 0.4;
        unit.Cable.TailFound = unit.Cable.TailAtWindow - 10;
        return At(unit.Key, (unit.Key, RunFacts.TailAtWindow), (unit.Opening.Tag, WindowFacts.RoughWidth))
            .Of(unit.Opening.Finished.Width * 0.1, house.TapeError);
    }
}
