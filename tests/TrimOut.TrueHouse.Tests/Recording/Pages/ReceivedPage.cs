using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Boxes: the label, the size that was really made, by tape on the unit, damage, serial.</summary>
internal static class ReceivedPage
{
    public static void Write(Installer installer)
    {
        foreach (var unit in installer.Truth.Units)
        {
            ReadBox(installer, unit);
            installer.Book.Put(unit.Key, (UnitFacts.Serial, unit.Serial));
        }
        installer.MarkUnits(Phase.Receive);
    }

    /// <summary>What is read of a box and of what is in it; the serial apart, which a service says of what it put in.</summary>
    public static void ReadBox(Installer installer, RealUnit unit)
    {
        var (book, tape) = (installer.Book, installer.Tape);
        book.Put(unit.Key, (UnitFacts.BoxLabel, unit.BoxLabel), (UnitFacts.FinishAsOrdered, unit.CameInItsFinish ? "yes" : "no"),
            (UnitFacts.LeadCameAt, Installer.Word(unit.LeadAsItCame)), (UnitFacts.Damage, unit.Damage));
        var item = book.Unit(unit.Key).Item;
        if (item.Get(UnitFacts.OrderWidth) is { } width && item.Get(UnitFacts.OrderHeight) is { } height)
        {
            var takenOff = unit.Kind.MadeWidth || book.Unit(unit.Key).Window.Mount != Mount.Inside ? 0 : unit.Kind.Deduction;
            book.Put(unit.Key, (UnitFacts.DeliveredWidth, tape.Exactly((double)width.Millimetres - takenOff + unit.CameWider)),
                (UnitFacts.SizeReadFrom, "unit"),
                (UnitFacts.DeliveredHeight, tape.Exactly((double)height.Millimetres + unit.CameLonger)));
        }
    }
}
