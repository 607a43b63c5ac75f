using TrimOut.Core.Facts;
using TrimOut.Core.Phases;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Units on their brackets.</summary>
internal static class HungPage
{
    public static void Write(Installer installer)
    {
        foreach (var unit in installer.Truth.Units)
        {
            installer.Book.Put(unit.Key, (UnitFacts.Setback, installer.Tape.Read(unit.Setback, unit.Key, "setback")),
                (UnitFacts.MiddleScrew, unit.MiddleScrew is { } screw ? installer.Tape.Read(screw, unit.Key, "screw") : null),
                (UnitFacts.FixedInto, Installer.Word(unit.FixedInto)),
                (UnitFacts.OutOfLevel, installer.Tape.Read(unit.OutOfLevel, unit.Key, "level")),
                (UnitFacts.FreeCord, installer.Tape.Read(unit.FreeCord, unit.Key, "cord")), (UnitFacts.CordHeldBy, "none"),
                (UnitFacts.CordConfirmedBy, "The crew"));
        }
        installer.MarkUnits(Phase.Hang);
    }
}
