using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>The tail that is found is longer than the one that was left.</summary>
public sealed class TailFoundLonger : Fault
{
    public override string Goes => "the tail that is found is longer than the one that was left";

    public override string Costs => "another cable, or one that was pulled out of the wall";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.TailFound = unit.Cable.TailAtWindow + 400;
        return At(unit.Key, (unit.Key, RunFacts.TailFound), (unit.Key, RunFacts.TailAtWindow)).Of(400, 2 * house.TapeError);
    }
}
