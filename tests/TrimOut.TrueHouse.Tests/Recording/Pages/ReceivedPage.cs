using TrimOut.Core.Facts;
using TrimOut.Core.Phases;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Boxes: the label, the size that was really made, damage, serial.</summary>
internal static class ReceivedPage
{
    public static void Write(Installer installer)
    {
        var (book, tape) = (installer.Book, installer.Tape);
        foreach (var unit in installer.Truth.Units)
        {
            book.Put(unit.Key, (UnitFacts.BoxLabel, unit.BoxLabel), (UnitFacts.FinishAsOrdered, unit.CameInItsFinish ? "yes" : "no"),
                (UnitFacts.LeadCameAt, Installer.Word(unit.LeadAsItCame)), (UnitFacts.Damage, unit.Damage), (UnitFacts.Serial, unit.Serial));
            var item = book.Unit(unit.Key).Item;
            if (item.Get(UnitFacts.OrderWidth) is { } width && item.Get(UnitFacts.OrderHeight) is { } height)
            {
                book.Put(unit.Key, (UnitFacts.DeliveredWidth, tape.Exactly((double)width.Millimetres + unit.CameWider)),
                    (UnitFacts.DeliveredHeight, tape.Exactly((double)height.Millimetres + unit.CameLonger)));
            }
        }
        installer.MarkUnits(Phase.Receive);
    }
}
