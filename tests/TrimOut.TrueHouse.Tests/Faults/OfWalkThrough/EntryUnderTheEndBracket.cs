using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable is marked to leave the wall where the end bracket will sit.</summary>
public sealed class EntryUnderTheEndBracket : Fault
{
    public override string Goes => "the cable is marked to leave the wall where the end bracket will sit";

    public override string Costs => "a pinched cable, or a bracket that can't be fixed";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.EndBracket > 14).One(dice) is not { } unit)
            return null;
        var kind = unit.Kind;
        unit.EntryFromJamb = unit.EntryAsBuilt = house.OnTape(kind.EndBracket / 2);
        unit.EntryBack = house.OnTape(kind.Setback + (kind.BracketBack / 2));
        unit.EntryBelowHead = house.OnTape(kind.BracketDown / 3);
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (unit.Key, UnitFacts.EntryBack), (unit.Key, UnitFacts.EntryBelowHead),
            (kind.Name, CoveringKindFacts.EndBracket))
            .Of(kind.EndBracket / 2, house.TapeError);
    }
}
