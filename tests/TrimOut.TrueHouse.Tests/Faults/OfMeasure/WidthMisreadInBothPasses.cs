using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The tape is hooked half an inch out for every width, both times.</summary>
public sealed class WidthMisreadInBothPasses : Fault
{
    public override string Goes => "the tape is hooked half an inch out for every width, both times";

    public override string Costs => "a unit half an inch too wide";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().Where(o => o.Finished.Width > 1000).One(dice) is not { } opening)
            return null;
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.WidthAgain])
            house.Slips.Writes(opening.Tag, fact, house.Typed(opening.Finished.Width + 12.7));
        return At(opening.Tag, (opening.Tag, WindowFacts.WidthTop), (opening.Tag, WindowFacts.HeightLeft), (opening.Tag, WindowFacts.DiagonalDown),
            (opening.Tag, WindowFacts.DiagonalUp))
            .Of(12.7 * opening.Finished.Width / opening.Finished.DiagonalDown, 2 * house.TapeError);
    }
}
