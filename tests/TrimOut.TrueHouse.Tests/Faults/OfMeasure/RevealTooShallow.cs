using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A reveal is shallower than the brackets need.</summary>
public sealed class RevealTooShallow : Fault
{
    public override string Goes => "an opening is shallower than the brackets need";

    public override string Costs => "brackets that hold in nothing";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["entry-off-opening"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.DepthNeeded > 30).One(dice) is not { } unit)
            return null;
        (unit.Opening.Depth, unit.Opening.InTheWay) = (unit.Kind.DepthNeeded - 8, "none");
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.Depth), (unit.Kind.Name, CoveringKindFacts.DepthNeeded)).Of(8, house.TapeError);
    }
}
