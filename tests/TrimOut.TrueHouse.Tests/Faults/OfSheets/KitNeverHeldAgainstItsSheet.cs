using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The values of a kind are typed from memory and never checked against its sheet.</summary>
public sealed class KitNeverHeldAgainstItsSheet : Fault
{
    public override string Goes => "the values of a kind are typed from memory and never checked against its sheet";

    public override string Costs => "any of them may be wrong, and all checks lean on them";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { } kind)
            return null;
        house.Slips.LeavesUnmarked(kind.Name, "sheet");
        return At(kind.Name, [(kind.Name, CoveringKindFacts.MotorEnd), .. house.Units.Where(u => u.Kind == kind).Take(1)
            .Select(u => (u.Key, (Fact)UnitFacts.Kind))]);
    }
}
