using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>A unit is hung out of level.</summary>
public sealed class HungOutOfLevel : Fault
{
    public override string Goes => "a unit is hung out of level";

    public override string Costs => "a fabric that runs to one side and frays";

    public override Stage In => Stage.Hung;

    public override string WouldShow => "how far the two ends are from level, read when the unit is hung";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Units.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
