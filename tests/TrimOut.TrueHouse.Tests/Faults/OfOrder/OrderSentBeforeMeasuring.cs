using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The sheet is dated before its windows were measured.</summary>
public sealed class OrderSentBeforeMeasuring : Fault
{
    public override string Goes => "the sheet is dated before its windows were measured";

    public override string Costs => "sizes from the framing";

    public override Stage In => Stage.Ordered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.OrderedOn, Installer.Day(house.Days[Stage.Measured].AddDays(-12)));
        return At(unit.Key, (unit.Key, UnitFacts.OrderedOn), (unit.Opening.Tag, WindowFacts.WidthTop));
    }
}
