using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The cable has two white conductors.</summary>
public sealed class ConductorsOfOtherColours : Fault
{
    public override string Goes => "the cable has two white conductors";

    public override string Costs => "wires changed over at every second window";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        (unit.Cable!.Sheet.Colours, unit.Cable.Sheet.Plus) = ("white, white", "white");
        return At(unit.Cable.Sheet.Name, (unit.Cable.Sheet.Name, CableTypeFacts.Colours), (unit.Key, RunFacts.Cable));
    }
}
