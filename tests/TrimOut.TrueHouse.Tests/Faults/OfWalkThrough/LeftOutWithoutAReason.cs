using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>A window is left out and nobody says why.</summary>
public sealed class LeftOutWithoutAReason : Fault
{
    public override string Goes => "a window is left out and nobody says why";

    public override string Costs => "asked again at every phase, or forgotten for good";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.FirstOrDefault(o => o.LeftOut) is not { } opening)
            return null;
        opening.LeftOutBecause = null;
        return At(opening.Tag, (opening.Tag, WindowFacts.Covered));
    }
}
