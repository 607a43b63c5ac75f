using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHandover;

/// <summary>The warranty runs from a day before the house was accepted.</summary>
public sealed class WarrantyBeforeAcceptance : Fault
{
    public override string Goes => "the warranty runs from a day before the house was accepted";

    public override string Costs => "months of warranty that the owner loses";

    public override Stage In => Stage.Handover;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.Writes(Book.JobItself, HouseFacts.WarrantyFrom, Installer.Day(house.Days[Stage.Handover].AddDays(-90)));
        return At(Book.JobItself, (Book.JobItself, HouseFacts.WarrantyFrom), (Book.JobItself, HouseFacts.AcceptedOn));
    }
}
