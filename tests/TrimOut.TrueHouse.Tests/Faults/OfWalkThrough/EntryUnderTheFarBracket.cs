using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable is marked to leave the wall beside the far jamb, where the other end bracket will sit.</summary>
public sealed class EntryUnderTheFarBracket : Fault
{
    public override string Goes => "the cable is marked to leave the wall beside the far jamb, where the other end bracket will sit";

    public override string Costs => "a pinched cable, at the end where nobody looks for one";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.EndBracket > 34).One(dice) is not { } unit)
            return null;
        var kind = unit.Kind;
        unit.EntryFromJamb = house.OnTape(unit.Opening.Finished.Width - (kind.EndBracket / 2));
        unit.EntryAsBuilt = unit.EntryFromJamb;
        (unit.EntryBack, unit.EntryBelowHead) = (house.OnTape(kind.Setback + (kind.BracketBack / 2)), house.OnTape(kind.BracketDown / 3));
        unit.Cable!.TailAtWindow = unit.Cable.TailFound = unit.Opening.Rough.Width + kind.LeadBehind + 120;
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (unit.Opening.Tag, WindowFacts.WidthTop), (kind.Name, CoveringKindFacts.EndBracket))
            .Of(kind.EndBracket / 2, 3 * house.TapeError);
    }
}
