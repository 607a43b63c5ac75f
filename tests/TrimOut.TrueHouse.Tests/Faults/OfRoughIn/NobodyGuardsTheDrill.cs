using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Holes are bored without a word of what keeps chips and dust off, and the step is marked.</summary>
public sealed class NobodyGuardsTheDrill : Fault
{
    public override string Goes => "holes are bored without a word of what keeps chips and dust off, and the step is marked";

    public override string Costs => "an eye";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.LeavesOut(Book.JobItself, HouseFacts.DrillGuard);
        return From(Stage.Pulled, Book.JobItself);
    }
}
