using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Finishes and sizes; then the sheet that is sent.</summary>
internal static class OrderPages
{
    public static void WriteSized(Installer installer)
    {
        foreach (var unit in installer.Truth.Units)
        {
            installer.Book.Put(unit.Key, (UnitFacts.Fabric, unit.Fabric), (UnitFacts.Colour, unit.Colour), (UnitFacts.Opacity, Word(unit.Opacity)),
                (UnitFacts.HeadCover, unit.Cover.Name));
            installer.Book.TakeOffered(unit.Key, UnitFacts.OrderWidth, UnitFacts.OrderHeight);
        }
        installer.MarkUnits(Phase.Order, "sheet-frozen", "acknowledged");
    }

    public static void WriteOrdered(Installer installer)
    {
        foreach (var unit in installer.Truth.Units)
            installer.Book.Put(unit.Key, (UnitFacts.OrderedOn, Day(installer.Truth.Days[Stage.Ordered])), (UnitFacts.Acknowledgement, $"A-{unit.Key}"));
        installer.MarkUnits(Phase.Order);
    }
}
