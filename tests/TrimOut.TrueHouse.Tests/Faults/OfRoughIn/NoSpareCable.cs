using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>One cable lies in a wall that will never be opened again, and no second one beside it.</summary>
public sealed class NoSpareCable : Fault
{
    public override string Goes => "one cable lies in a wall that will never be opened again, and no second one beside it";

    public override string Costs => "a wall, for the first cable that fails";

    public override Stage In => Stage.Pulled;

    public override string WouldShow => "spare cables, by window: how many, and where their ends are";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Wired.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
