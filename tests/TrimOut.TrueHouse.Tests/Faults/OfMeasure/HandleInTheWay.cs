using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A window handle stands out into the plane in which the unit hangs.</summary>
public sealed class HandleInTheWay : Fault
{
    public override string Goes => "a window handle stands out into the plane in which the unit hangs";

    public override string Costs => "a bar that catches, and a motor that tears";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit || unit.Opening.Depth - unit.Kind.Setback - unit.Kind.BracketBack < 5)
            return null;
        unit.Opening.InTheWay = "handle";
        unit.Opening.StandsOut = house.OnTape(unit.Opening.Depth - unit.Kind.Setback - unit.Kind.BracketBack + 15);
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.InTheWayDepth), (unit.Opening.Tag, WindowFacts.Depth),
            (unit.Kind.Name, CoveringKindFacts.EndBracketBack)).Of(15, 2 * house.TapeError);
    }
}
