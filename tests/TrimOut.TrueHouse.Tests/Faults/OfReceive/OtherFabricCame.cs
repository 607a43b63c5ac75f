using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>A unit comes in another colour than its neighbour.</summary>
public sealed class OtherFabricCame : Fault
{
    public override string Goes => "a unit comes in another colour than its neighbour";

    public override string Costs => "a second delivery, or an owner who lives with it";

    public override Stage In => Stage.Received;

    public override string WouldShow => "fabric and colour as they are printed on the box";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Units.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
