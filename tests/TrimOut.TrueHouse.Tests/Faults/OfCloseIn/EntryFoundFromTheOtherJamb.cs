using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>The tape is held at the wrong jamb when a cable is found again.</summary>
public sealed class EntryFoundFromTheOtherJamb : Fault
{
    public override string Goes => "after drywall the way to the entry is measured from the other jamb";

    public override string Costs => "a bracket that is moved away from a cable that is not there, onto the one that is";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        var other = unit.Opening.Finished.Width - unit.EntryAsBuilt;
        house.Slips.Writes(unit.Key, UnitFacts.EntryAsBuilt, house.Typed(other));
        return At(unit.Key, (unit.Key, UnitFacts.EntryAsBuilt), (unit.Key, UnitFacts.EntryFromJamb)).Of(Math.Abs(other - unit.EntryFromJamb), 60);
    }
}
