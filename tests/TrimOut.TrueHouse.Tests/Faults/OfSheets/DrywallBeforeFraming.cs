using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The day of the drywall is typed in the year before.</summary>
public sealed class DrywallBeforeFraming : Fault
{
    public override string Goes => "the day of the drywall is typed in the year before";

    public override string Costs => "every date after it is a day late, and nobody hurries";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.Writes(Book.JobItself, HouseFacts.DrywallOn, Installer.Day(house.Days[Stage.WalkThrough].AddDays(-30)));
        return At(Book.JobItself, (Book.JobItself, HouseFacts.DrywallOn), (Book.JobItself, HouseFacts.FramingOn));
    }
}
