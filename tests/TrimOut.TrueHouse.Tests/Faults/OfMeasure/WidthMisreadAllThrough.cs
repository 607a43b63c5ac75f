using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The tape is hooked half an inch out for all three widths, and right the second time.</summary>
public sealed class WidthMisreadAllThrough : Fault
{
    public override string Goes => "the tape is hooked half an inch out for all three widths, and right the second time";

    public override string Costs => "a unit half an inch too wide";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Covered().One(dice) is not { } opening)
            return null;
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom])
            house.Slips.Writes(opening.Tag, fact, house.Typed(opening.Finished.Width + 12.7));
        return At(opening.Tag, (opening.Tag, WindowFacts.WidthTop), (opening.Tag, WindowFacts.WidthAgain)).Of(12.7, 2 * house.TapeError);
    }
}
