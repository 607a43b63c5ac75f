using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Two runs are landed on each other's output and written down as planned.</summary>
public sealed class LandedOnEachOthersOutput : Fault
{
    public override string Goes => "two runs are landed on each other's output and written down as planned";

    public override string Costs => "the next person switches off the wrong window";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Panel is not null).Two(dice) is not var (first, second))
            return null;
        (first.LandedInsteadOfIt, second.LandedInsteadOfIt) = (second, first);
        return At(first.Key, (first.Key, RunFacts.WentDead)).And(second.Key);
    }
}
