using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>A loop of chain or cable hangs where a child reaches it.</summary>
public sealed class CordWithinReach : Fault
{
    public override string Goes => "a loop of chain or cable hangs where a child reaches it";

    public override string Costs => "a child that is strangled";

    public override Stage In => Stage.Hung;

    public override string WouldShow => "the free length of cord or chain in any position, what holds it tight, and who confirmed it";

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Units.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
