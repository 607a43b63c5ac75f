using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The installer takes off what the maker takes off anyway.</summary>
public sealed class TakenOffTwice : Fault
{
    public override string Goes => "the installer takes off what the maker takes off anyway";

    public override string Costs => "light down both sides";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => !u.Kind.MadeWidth).One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.OrderWidth, house.Typed(unit.Opening.Finished.PlumbWidth - unit.Kind.Step - 12.7));
        return At(unit.Key, (unit.Key, UnitFacts.OrderWidth), (unit.Opening.Tag, WindowFacts.WidthTop)).Of(12.7, house.TapeError);
    }
}
