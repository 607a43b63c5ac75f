using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Joints are made while the panel is live.</summary>
public sealed class SplicedUnderPower : Fault
{
    public override string Goes => "joints are made while the panel is live";

    public override string Costs => "a panel that dies with its first short";

    public override Stage In => Stage.Powered;

    public override string WouldShow => "who switched the panel off before the joints were made, and how it was seen to be off";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Wired.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
