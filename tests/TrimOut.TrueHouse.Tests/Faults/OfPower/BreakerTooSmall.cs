using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A panel hangs on a breaker that is shared and full.</summary>
public sealed class BreakerTooSmall : Fault
{
    public override string Goes => "a panel hangs on a breaker that is shared and full";

    public override string Costs => "a house that goes dark when all units move";

    public override Stage In => Stage.Powered;

    public override string WouldShow => "the board and the rating of the breaker, what else is on it, and the input current of the panel";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return Unseen("P1");
    }
}
