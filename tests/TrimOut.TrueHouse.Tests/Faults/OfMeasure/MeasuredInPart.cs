using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A diagonal is left out, and the window is said to be measured.</summary>
public sealed class MeasuredInPart : Fault
{
    public override string Goes => "a diagonal is left out, and the window is said to be measured";

    public override string Costs => "the figure that was left out is the one that is off";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().One(dice) is not { } opening)
            return null;
        house.Slips.LeavesOut(opening.Tag, WindowFacts.DiagonalUp);
        return From(Stage.Measured, opening.Tag);
    }
}
