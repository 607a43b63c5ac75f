using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>The maker takes nothing off an opening: the unit is as wide as it was ordered, and so says its label.</summary>
public sealed class NothingTakenOff : Fault
{
    public override string Goes => "the maker takes nothing off: the unit is as wide as its opening, and its label says so";

    public override string Costs => "a unit that does not go in, found on the ladder";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Where(u => !u.Kind.MadeWidth && !u.Opening.Outside && u.Kind.Deduction > 4 * house.TapeError).One(dice) is not { } unit)
            return null;
        unit.CameWider = unit.Kind.Deduction;
        return At(unit.Key, (unit.Key, UnitFacts.DeliveredWidth), (unit.Key, UnitFacts.OrderWidth)).Of(unit.CameWider, house.TapeError);
    }
}
