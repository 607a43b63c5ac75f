using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Shown, handed over, signed.</summary>
internal static class HandoverPage
{
    public static void Write(Installer installer)
    {
        var (book, day) = (installer.Book, Day(installer.Truth.Days[Stage.Handover]));
        book.Put(Book.JobItself, (HouseFacts.DemonstratedOn, day), (HouseFacts.DemonstratedTo, "The owner"),
            (HouseFacts.PowerCutTold, "All units are moved by hand."),
            (HouseFacts.BinderGivenOn, day),
            (HouseFacts.OpenItemsAgreed, "none"),
            (HouseFacts.AcceptedBy, "The owner"), (HouseFacts.AcceptedOn, day), (HouseFacts.WarrantyFrom, day), (HouseFacts.WarrantyTerm, "Two years"));
        installer.MarkUnits(Phase.Handover);
        installer.MarkHouse(Phase.Handover);
    }
}
