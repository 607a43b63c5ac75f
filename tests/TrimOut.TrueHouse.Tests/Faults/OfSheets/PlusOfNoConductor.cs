using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>Plus is said to be a colour that the cable does not have.</summary>
public sealed class PlusOfNoConductor : Fault
{
    public override string Goes => "plus is said to be a color that the cable does not have";

    public override string Costs => "a color that everybody guesses at anew";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Sheet.Plus = "brown";
        return At(unit.Cable.Sheet.Name, (unit.Cable.Sheet.Name, CableTypeFacts.Plus), (unit.Key, RunFacts.Cable));
    }
}
