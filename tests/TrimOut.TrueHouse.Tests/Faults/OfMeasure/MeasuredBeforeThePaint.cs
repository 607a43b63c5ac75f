using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>Openings are measured weeks before the day on which they are painted.</summary>
public sealed class MeasuredBeforeThePaint : Fault
{
    public override string Goes => "openings are measured weeks before the day on which they are painted";

    public override string Costs => "every size a coat of plaster too large";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.Writes(Book.JobItself, HouseFacts.PaintedOn, Installer.Day(house.Days[Stage.Measured].AddDays(20)));
        return At(Book.JobItself, (Book.JobItself, HouseFacts.PaintedOn), (house.Covered().First().Tag, WindowFacts.WidthTop))
            .And([.. house.Covered().Select(o => o.Tag)]);
    }
}
