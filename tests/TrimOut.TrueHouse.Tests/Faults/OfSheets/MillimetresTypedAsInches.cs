using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>A bracket is typed in the millimetres of its sheet in a house that reads bare numbers as inches.</summary>
public sealed class MillimetresTypedAsInches : Fault
{
    public override string Goes => "a bracket is typed in the millimeters of its sheet in a house that reads bare numbers as inches";

    public override string Costs => "brackets that seem to fill the window";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Metric || house.UsedKind(dice) is not { } kind || kind.EndBracket < 26)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.EndBracket, Installer.Number(Math.Round(kind.EndBracket)));
        return At(kind.Name, (kind.Name, CoveringKindFacts.EndBracket)).And(house.About(kind));
    }
}
