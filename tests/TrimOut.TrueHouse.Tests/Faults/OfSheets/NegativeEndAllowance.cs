using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>An end allowance is typed with the minus sign of the sheet's table.</summary>
public sealed class NegativeEndAllowance : Fault
{
    public override string Goes => "an end allowance is typed with the minus sign of the sheet's table";

    public override string Costs => "units that are ordered too wide by twice as much";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { } kind)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.EndAllowance, "-3 mm");
        return At(kind.Name, (kind.Name, CoveringKindFacts.EndAllowance)).And(house.About(kind));
    }
}
