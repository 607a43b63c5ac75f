using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>A window that is a way of escape gets a covering that stays shut without power.</summary>
public sealed class EscapeWindowCovered : Fault
{
    public override string Goes => "a window that is a way of escape gets a covering that stays shut without power";

    public override string Costs => "a way out that is closed in a fire";

    public override Stage In => Stage.WalkThrough;

    public override string WouldShow => "whether a window is a way of escape, and what its covering does without power";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Inside().One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
