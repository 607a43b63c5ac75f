using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHandover;

/// <summary>Open items are said to be agreed, and nothing is written.</summary>
public sealed class OpenItemsNotWritten : Fault
{
    public override string Goes => "open items are said to be agreed, and nothing is written";

    public override string Costs => "a list that everybody remembers differently";

    public override Stage In => Stage.Handover;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.LeavesOut(Book.JobItself, HouseFacts.OpenItemsAgreed);
        return From(Stage.Handover, Book.JobItself);
    }
}
