using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A run is written to an output that the panel does not have.</summary>
public sealed class OutputThatIsNotThere : Fault
{
    public override string Goes => "a run is written to an output that the panel does not have";

    public override string Costs => "a map that sends the next person nowhere";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Output = house.PanelSheets[0].Outputs + 1;
        return At(unit.Key, (unit.Key, RunFacts.Output), (house.PanelSheets[0].Name, PanelTypeFacts.Outputs));
    }
}
