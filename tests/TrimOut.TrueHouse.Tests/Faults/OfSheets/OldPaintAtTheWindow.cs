using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>Brackets are drilled through paint that may hold lead.</summary>
public sealed class OldPaintAtTheWindow : Fault
{
    public override string Goes => "brackets are drilled through paint that may hold lead";

    public override string Costs => "dust that poisons a child";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.OldestPaint = 1955;
        return At(Book.JobItself, (Book.JobItself, HouseFacts.OldestPaint));
    }
}
