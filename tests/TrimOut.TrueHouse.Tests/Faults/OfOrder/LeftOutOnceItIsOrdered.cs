using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The owner no longer wants a covering in a window whose unit is on order, and nobody calls the maker.</summary>
public sealed class LeftOutOnceItIsOrdered : Fault
{
    public override string Goes => "a window is left out once its unit is on order, and nobody calls the maker";

    public override string Costs => "a unit that is made, delivered and paid for, and hangs nowhere";

    public override Stage In => Stage.Ordered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        // Nothing but its order tells of it: no cable, no remote.
        unit.Power = PowerSource.Battery;
        house.MovedByNothing(unit);
        house.Slips.Does(Stage.Ordered, i =>
        {
            i.Book.Correct(unit.Opening.Tag, WindowFacts.NotCoveredBecause, "The owner wants the view.");
            i.Book.Correct(unit.Opening.Tag, WindowFacts.Covered, "no");
            unit.Opening.LeftOut = true;
        });
        return From(Stage.Ordered, unit.Opening.Tag);
    }
}
