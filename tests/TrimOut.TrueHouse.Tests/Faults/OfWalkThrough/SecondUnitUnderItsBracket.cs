using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable of the second unit leaves the head where its own bracket sits, reckoned from the left of the opening.</summary>
public sealed class SecondUnitUnderItsBracket : Fault
{
    public override string Goes => "the cable of the second unit leaves the head where its own bracket sits, reckoned from the left of the opening";

    public override string Costs => "a pinched cable in the middle of a wide window";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count == 2 && o.Units[1].Kind.EndBracket > 14).One(dice) is not { } opening)
            return null;
        var (unit, kind) = (opening.Units[1], opening.Units[1].Kind);
        (unit.Lead, unit.EntrySide) = (Side.Left, Side.Left);
        var left = kind.EndClear + opening.Units[0].PartWidth + kind.GapLeast;
        (unit.EntryFromJamb, unit.EntryAsBuilt) = (house.OnTape(left + (kind.EndBracket / 2)), left + (kind.EndBracket / 2));
        (unit.EntryBack, unit.EntryBelowHead) = (house.OnTape(kind.Setback + (kind.BracketBack / 2)), house.OnTape(kind.BracketDown / 3));
        unit.Cable!.TailAtWindow = unit.Cable.TailFound = (2 * unit.PartWidth) + kind.LeadBehind + 200;
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (unit.Key, UnitFacts.PartWidth), (kind.Name, CoveringKindFacts.EndBracket))
            .Of(kind.EndBracket / 2, house.TapeError);
    }
}
