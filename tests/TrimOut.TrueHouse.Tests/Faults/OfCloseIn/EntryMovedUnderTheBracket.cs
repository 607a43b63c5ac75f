using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>The drywall crew moves the cable to where the end bracket will sit.</summary>
public sealed class EntryMovedUnderTheBracket : Fault
{
    public override string Goes => "the drywall crew moves the cable to where the end bracket will sit";

    public override string Costs => "a pinched cable, or a bracket that can't be fixed";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.EndBracket > 18 && u.Kind.BracketDown > 12).One(dice) is not { } unit)
            return null;
        var kind = unit.Kind;
        unit.EntryFromJamb = house.OnTape(kind.EndBracket + 20);
        (unit.EntryBack, unit.EntryBelowHead) = (house.OnTape(kind.Setback + (kind.BracketBack / 2)), house.OnTape(kind.BracketDown / 3));
        unit.EntryAsBuilt = kind.EndBracket / 2;
        return At(unit.Key, (unit.Key, UnitFacts.EntryAsBuilt), (kind.Name, CoveringKindFacts.EndBracket)).Of(kind.EndBracket / 2, house.TapeError);
    }
}
