using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A diagonal is read an inch too large.</summary>
public sealed class DiagonalMisreadByAnInch : Fault
{
    public override string Goes => "a diagonal is read an inch too large";

    public override string Costs => "a square opening that is shimmed";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().One(dice) is not { } opening)
            return null;
        house.Slips.Writes(opening.Tag, WindowFacts.DiagonalDown, house.Typed(opening.Finished.DiagonalDown + 25.4));
        return At(opening.Tag, (opening.Tag, WindowFacts.DiagonalDown), (opening.Tag, WindowFacts.DiagonalUp)).Of(25.4, 2 * house.TapeError);
    }
}
