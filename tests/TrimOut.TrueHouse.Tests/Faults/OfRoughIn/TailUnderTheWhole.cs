using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A tail is left that is shorter than the window.</summary>
public sealed class TailUnderTheWhole : Fault
{
    public override string Goes => "a tail is left that is shorter than the window";

    public override string Costs => "a lead that reaches one end only, whatever changes";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => RandomWiring.Reach(u, u.Opening.Rough.Width) < u.Opening.Finished.Width * 0.7).One(dice) is not { } unit)
            return null;
        unit.Cable!.TailAtWindow = unit.Opening.Finished.Width * 0.8;
        unit.Cable.TailFound = unit.Cable.TailAtWindow - 10;
        return At(unit.Key, (unit.Key, RunFacts.TailAtWindow), (unit.Opening.Tag, WindowFacts.RoughWidth))
            .Of(unit.Opening.Finished.Width * 0.2, house.TapeError);
    }
}
