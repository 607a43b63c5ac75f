using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A unit with a battery is to be fed by a panel once the walls are closed.</summary>
public sealed class PanelOnceTheWallIsClosed : Fault
{
    public override string Goes => "a unit with a battery is to be fed by a panel once the walls are closed";

    public override string Costs => "a wall that is opened again for a cable";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var closed = house.Wired.Select(u => u.Opening.Room).ToHashSet();
        if (house.Units.Where(u => u.Power == PowerSource.Battery && closed.Contains(u.Opening.Room)).One(dice) is not { } unit)
            return null;
        house.Slips.Does(Stage.CloseIn, i => i.Book.Correct(unit.Key, UnitFacts.Power, "panel"));
        return From(Stage.CloseIn, unit.Key);
    }
}
