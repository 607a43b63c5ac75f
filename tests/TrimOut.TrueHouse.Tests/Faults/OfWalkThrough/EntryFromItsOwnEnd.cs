using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The entry of the second unit is written from the end of its own unit, where it was marked, and not from the jamb.</summary>
public sealed class EntryFromItsOwnEnd : Fault
{
    public override string Goes => "the entry of the second unit is measured from the end of its own unit, and not from the jamb";

    public override string Costs => "a cable that is brought out beside the first one, half a wide window away from its motor";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count == 2).One(dice) is not { } opening)
            return null;
        var (first, unit) = (opening.Units[0], opening.Units[1]);
        (unit.Lead, unit.EntrySide) = (Side.Left, Side.Left);
        (unit.EntryFromJamb, unit.EntryAsBuilt) = (first.EntryFromJamb, first.EntryAsBuilt);
        (unit.EntryBack, unit.EntryBelowHead) = (first.EntryBack, first.EntryBelowHead);
        unit.Cable!.TailAtWindow = unit.Cable.TailFound = house.UpOnTape((2 * unit.PartWidth) + unit.Kind.LeadBehind + 200);
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (first.Key, UnitFacts.EntryFromJamb), (unit.Key, UnitFacts.EntrySide))
            .Of(first.PartWidth - first.EntryFromJamb, house.TapeError);
    }
}
