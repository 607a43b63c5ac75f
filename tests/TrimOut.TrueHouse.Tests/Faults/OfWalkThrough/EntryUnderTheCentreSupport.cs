using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable is marked to leave the wall in the middle of the head, where a wide unit has its support.</summary>
public sealed class EntryUnderTheCentreSupport : Fault
{
    public override string Goes => "the cable is marked to leave the wall in the middle of the head, where a wide unit has its support";

    public override string Costs => "a cable under a screw that is driven last";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.BracketDown > 12).One(dice) is not { } unit)
            return null;
        var kind = unit.Kind;
        unit.NeedCentreSupport();
        unit.EntryFromJamb = house.OnTape(unit.Opening.Rough.Width / 2);
        unit.EntryAsBuilt = unit.Opening.Finished.Width / 2;
        unit.EntryBack = house.OnTape(kind.Setback + (kind.BracketBack / 2));
        unit.EntryBelowHead = house.OnTape(kind.BracketDown / 3);
        unit.Cable!.TailAtWindow = unit.Cable.TailFound = unit.Opening.Rough.Width + kind.LeadBehind + 120;
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (unit.Opening.Tag, WindowFacts.RoughWidth), (kind.Name, CoveringKindFacts.CentreBracket))
            .Of(kind.CentreBracket / 2, house.TapeError);
    }
}
