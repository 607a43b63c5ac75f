using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A handle stands out into the hanging plane: how far is measured, and in the line above it stands that nothing is in the way.</summary>
public sealed class HandleSaidToBeNone : Fault
{
    public override string Goes => "how far a handle stands out is measured, and \"none\" is written for what is in the way";

    public override string Costs => "a bar that catches, in a window that was said to be clear";

    public override Stage In => Stage.Measured;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit || unit.Opening.Depth - unit.Kind.Setback - unit.Kind.BracketBack < 5)
            return null;
        unit.Opening.InTheWay = "handle";
        unit.Opening.StandsOut = house.OnTape(unit.Opening.Depth - unit.Kind.Setback - unit.Kind.BracketBack + 15);
        house.Slips.Writes(unit.Opening.Tag, WindowFacts.InTheWay, "none");
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.InTheWayDepth), (unit.Opening.Tag, WindowFacts.InTheWay),
            (unit.Opening.Tag, WindowFacts.Depth)).Of(15, 2 * house.TapeError);
    }
}
