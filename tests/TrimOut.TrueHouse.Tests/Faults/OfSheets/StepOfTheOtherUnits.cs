using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>A house in millimetres keeps sizes in steps of an eighth of an inch.</summary>
public sealed class StepOfTheOtherUnits : Fault
{
    public override string Goes => "a house in millimeters keeps sizes in steps of an eighth of an inch";

    public override string Costs => "orders with odd tenths of a millimeter, rounded once more by the maker";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (!house.Metric || house.UsedKind(dice) is not { } kind)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.RoundTo, "1/8\"");
        return At(kind.Name, (kind.Name, CoveringKindFacts.RoundTo)).And(house.About(kind)).And(Book.JobItself);
    }
}
