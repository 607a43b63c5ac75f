using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Two runs are landed on each other's output and written down as planned.</summary>
public sealed class LandedOnEachOthersOutput : Fault
{
    public override string Goes => "two runs are landed on each other's output and written down as planned";

    public override string Costs => "the next person switches off the wrong window";

    public override Stage In => Stage.Powered;

    public override string WouldShow => "a step: switch each output off alone, and write which window goes dead";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Wired.Two(dice) is var (first, second) ? Unseen(first.Key, second.Key) : null;
    }
}
