using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A staple or a plate goes through the jacket to one conductor.</summary>
public sealed class ConductorTouchesTheBuilding : Fault
{
    public override string Goes => "a staple or a plate goes through the jacket to one conductor";

    public override string Costs => "one more such fault anywhere, and a panel switches off";

    public override Stage In => Stage.Pulled;

    public override string WouldShow => "each conductor to the frame of the building with both ends open: it must read open";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Wired.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
