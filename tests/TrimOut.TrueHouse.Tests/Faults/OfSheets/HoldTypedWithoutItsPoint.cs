using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The hold of a button is typed ten times as long as the sheet has it.</summary>
public sealed class HoldTypedWithoutItsPoint : Fault
{
    public override string Goes => "the hold of a button is typed ten times as long as the sheet has it";

    public override string Costs => "a button held for a minute, and a unit taken for broken";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { PairHold: > 3 } kind)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.PairHold, Installer.Number(kind.PairHold * 10));
        return At(kind.Name, (kind.Name, CoveringKindFacts.PairHold));
    }
}
