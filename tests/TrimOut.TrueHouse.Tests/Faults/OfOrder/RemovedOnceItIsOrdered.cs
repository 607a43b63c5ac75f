using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>A window is taken out of the records once its unit is on order, and nobody calls the maker.</summary>
public sealed class RemovedOnceItIsOrdered : Fault
{
    public override string Goes => "a window is removed once its unit is on order, and nobody calls the maker";

    public override string Costs => "a box that belongs nowhere, and a unit that is paid for all the same";

    public override Stage In => Stage.Ordered;

    public override IReadOnlyList<string> DoNotNameIt => ["openings-off-count"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.MovedByNothing(unit);
        house.Slips.Does(Stage.Ordered, i =>
        {
            i.Book.Do(RemoveItems.Remove(i.Book.House, i.Book.House.Find(i.Book.IdOf(ItemKind.Window, unit.Opening.Tag))!).Value);
            unit.Opening.LeftOut = true;
        });
        return From(Stage.Ordered, Book.JobItself);
    }
}
