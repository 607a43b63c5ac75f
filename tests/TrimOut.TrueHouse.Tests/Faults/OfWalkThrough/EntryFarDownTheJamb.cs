using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable is marked to leave the wall far down the jamb.</summary>
public sealed class EntryFarDownTheJamb : Fault
{
    public override string Goes => "the cable is marked to leave the wall far down the jamb";

    public override string Costs => "a lead that hangs in sight beside the window";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Opening.Rough.Height > 900).One(dice) is not { } unit)
            return null;
        unit.EntryBelowHead = house.OnTape(unit.Opening.Rough.Height * 0.4);
        unit.Cable!.TailAtWindow = unit.Cable.TailFound = unit.Opening.Rough.Width + unit.EntryBelowHead + unit.Kind.LeadBehind + 120;
        return At(unit.Key, (unit.Key, UnitFacts.EntryBelowHead)).Of(150, house.TapeError);
    }
}
