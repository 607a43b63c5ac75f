using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>How far the house has got around a unit, which decides what the cheapest mend is.</summary>
internal static class Moment
{
    /// <summary>Whether the framing is still open: no step of close-in or later was marked for it, nor, where no cable was pulled to it, around it.</summary>
    public static bool WallOpen(Unit unit) => !Begun(unit, Phase.CloseIn) && !(!Pulled(unit) && ItsRoomIsClosed(unit));

    /// <summary>
    /// Whether another cable of its room was looked for behind the drywall; where the room has no other, whether all others of the house were.
    /// </summary>
    public static bool ItsRoomIsClosed(Unit unit)
    {
        var others = unit.Window.Room is { } room ? room.Windows.SelectMany(w => w.Units).Where(u => u.Id != unit.Id && u.OnPanel).ToList() : [];
        return others.Count > 0 ? others.Exists(Found)
            : unit.House.Units.Any(u => u.Id != unit.Id && u.OnPanel) && unit.House.Units.All(u => u.Id == unit.Id || !u.OnPanel || Found(u));

        static bool Found(Unit one) =>
            StepList.All.Any(s => s is { Subject: ItemKind.Unit, Phase: Phase.CloseIn } && one.MarkOf(s) == StepMark.Done);
    }

    private static bool Pulled(Unit unit) =>
        StepList.All.Any(s => s is { Subject: ItemKind.Unit, Phase: Phase.RoughIn } && unit.MarkOf(s) == StepMark.Done);

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
