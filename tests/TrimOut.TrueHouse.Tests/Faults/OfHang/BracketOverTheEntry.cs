using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>Brackets are fixed farther back than the sheet says, over the cable.</summary>
public sealed class BracketOverTheEntry : Fault
{
    public override string Goes => "brackets are fixed farther back than the sheet says, over the cable";

    public override string Costs => "a pinched cable";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.EndBracket > 24 && u.Kind.BracketDown > 16 && u.Opening.InTheWay == "none").One(dice) is not { } unit)
            return null;
        var kind = unit.Kind;
        unit.EntryFromJamb = unit.EntryAsBuilt = house.OnTape(kind.EndBracket / 2);
        (unit.EntryBack, unit.EntryBelowHead) = (house.UpOnTape(kind.Setback + kind.BracketBack + 12), house.OnTape(kind.BracketDown / 3));
        unit.Opening.Depth = Math.Max(unit.Opening.Depth, unit.EntryBack + (kind.BracketBack / 2) + (unit.Cover.Depth ?? 0) + 10);
        unit.Setback = unit.EntryBack - (kind.BracketBack / 2);
        return At(unit.Key, (unit.Key, UnitFacts.Setback), (unit.Key, UnitFacts.EntryBack), (kind.Name, CoveringKindFacts.EndBracket))
            .Of(kind.BracketBack / 2, 2 * house.TapeError);
    }
}
