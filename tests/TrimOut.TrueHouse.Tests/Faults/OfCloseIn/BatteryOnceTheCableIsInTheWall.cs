using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A unit is to have a battery once its cable lies in the wall.</summary>
public sealed class BatteryOnceTheCableIsInTheWall : Fault
{
    public override string Goes => "a unit is to have a battery once its cable lies in the wall";

    public override string Costs => "a live cable end that nobody knows of";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Does(Stage.CloseIn, i => i.Book.Correct(unit.Key, UnitFacts.Power, "battery"));
        return From(Stage.CloseIn, unit.Opening.Tag);
    }
}
