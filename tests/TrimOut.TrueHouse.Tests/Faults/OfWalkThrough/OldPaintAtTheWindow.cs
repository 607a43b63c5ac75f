using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>Brackets are drilled through paint that may hold lead.</summary>
public sealed class OldPaintAtTheWindow : Fault
{
    public override string Goes => "brackets are drilled through paint that may hold lead";

    public override string Costs => "dust that poisons a child";

    public override Stage In => Stage.WalkThrough;

    public override string WouldShow => "the age of the house or of its paint, and what protects whoever drills";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Inside().One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}
