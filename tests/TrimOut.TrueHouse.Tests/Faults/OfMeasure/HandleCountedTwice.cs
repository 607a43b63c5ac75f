using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The depth is read to the handle, and what the handle stands out is written as well.</summary>
public sealed class HandleCountedTwice : Fault
{
    public override string Goes => "the depth is read to the handle, and what the handle stands out is written as well";

    public override string Costs => "a shallower kind, or an outside mount, for no reason";

    public override Stage In => Stage.Measured;

    public override string WouldShow => "what the depth is read to: the glass, or the first thing in the way";

    public override IReadOnlyList<string> DoNotNameIt => ["handle-in-hanging-plane", "depth-too-shallow", "stands-out-of-reveal", "setback-too-deep"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.InTheWay != "none").One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Opening.Tag, WindowFacts.Depth, house.Typed(unit.Opening.Depth - unit.Opening.StandsOut));
        return Unseen(unit.Key);
    }
}
