using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable is marked to leave the wall on the lead side, and farther from the motor than the middle of the head.</summary>
public sealed class EntryFarAlongTheHead : Fault
{
    public override string Goes => "the cable is marked to leave the wall on the lead side, and farther from the motor than the middle of the head";

    public override string Costs => "a lead in sight along the head";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.Rough.Width > 620).One(dice) is not { } unit)
            return null;
        unit.EntryFromJamb = unit.EntryAsBuilt = house.OnTape(unit.Opening.Rough.Width * 0.72);
        unit.Cable!.TailAtWindow = unit.Cable.TailFound = (2 * unit.Opening.Rough.Width) + unit.Kind.LeadBehind + 120;
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (unit.Key, UnitFacts.EntrySide)).Of(100, house.TapeError);
    }
}
