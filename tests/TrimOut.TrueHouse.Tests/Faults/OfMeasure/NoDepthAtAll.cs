using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The tape is read as nothing where the depth of a reveal belongs.</summary>
public sealed class NoDepthAtAll : Fault
{
    public override string Goes => "the tape is read as nothing where the depth of an opening belongs";

    public override string Costs => "brackets ordered for a face that is glass";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Opening.Tag, WindowFacts.Depth, "0");
        return At(unit.Opening.Tag, (unit.Opening.Tag, WindowFacts.Depth));
    }
}
