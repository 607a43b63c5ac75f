using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Units on their brackets.</summary>
internal static class HungPage
{
    public static void Write(Installer installer)
    {
        foreach (var unit in installer.Truth.Units)
            Write(installer, unit);
        installer.MarkUnits(Phase.Hang);
    }

    /// <summary>What is read at one unit.</summary>
    public static void Write(Installer installer, RealUnit unit) =>
        installer.Book.Put(unit.Key, (UnitFacts.Setback, installer.Tape.Read(unit.Setback, unit.Key, "setback")),
            (UnitFacts.MiddleScrew, unit.MiddleScrew is { } screw ? installer.Tape.Read(screw, unit.Key, "screw") : null),
            (UnitFacts.FixedInto, Installer.Word(unit.FixedInto)),
            (UnitFacts.OutOfLevel, installer.Tape.Read(unit.OutOfLevel, unit.Key, "level")),
            (UnitFacts.FreeCord, installer.Tape.Read(unit.FreeCord, unit.Key, "cord")), (UnitFacts.CordHeldBy, "none"),
            (UnitFacts.CordConfirmedBy, "The crew"));
}
