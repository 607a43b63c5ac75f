using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>How far the house has got around a unit, which decides what the cheapest mend is.</summary>
internal static class Moment
{
    /// <summary>Whether the framing is still open: no step of close-in or later was marked for it.</summary>
    public static bool WallOpen(Unit unit) => !Begun(unit, Phase.CloseIn);

    /// <summary>Whether the size can still be changed: its sheet is not frozen.</summary>
    public static bool NotOrdered(Unit unit) => unit.Item.Latest(Facts.UnitFacts.OrderedOn.Name)?.Stored is null;

    /// <summary>Whether the framing is still open all through the house, as far as anybody marked.</summary>
    public static bool WallsOpen(House house) => house.Units.All(WallOpen);

    /// <summary>Whether it hangs, or is being hung: a step of that or later was marked for it.</summary>
    public static bool Hangs(Unit unit) => Begun(unit, Phase.Hang);

    /// <summary>Whether a step of a phase or of a later one was marked for a unit.</summary>
    public static bool Begun(Unit unit, Phase from) =>
        StepList.All.Any(s => s.Subject == ItemKind.Unit && s.Phase >= from && unit.MarkOf(s) is not null);
}
