using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHandover;

/// <summary>Nobody tells the owner what the units do without power.</summary>
public sealed class PowerCutNotExplained : Fault
{
    public override string Goes => "nobody tells the owner what the units do without power";

    public override string Costs => "a window that can't be opened when it must be";

    public override Stage In => Stage.Handover;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.LeavesOut(Book.JobItself, HouseFacts.PowerCutTold);
        house.Slips.LeavesUnmarked(Book.JobItself, "power-cut-shown");
        return From(Stage.Handover, Book.JobItself);
    }
}
