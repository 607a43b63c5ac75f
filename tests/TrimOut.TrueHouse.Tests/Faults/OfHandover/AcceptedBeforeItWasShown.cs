using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHandover;

/// <summary>The owner signs days before the demonstration.</summary>
public sealed class AcceptedBeforeItWasShown : Fault
{
    public override string Goes => "the owner signs days before the demonstration";

    public override string Costs => "a signature that is worth nothing";

    public override Stage In => Stage.Handover;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.Writes(Book.JobItself, HouseFacts.AcceptedOn, Installer.Day(house.Days[Stage.Handover].AddDays(-6)));
        return At(Book.JobItself, (Book.JobItself, HouseFacts.AcceptedOn), (Book.JobItself, HouseFacts.DemonstratedOn));
    }
}
