using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>An adjustable supply is set a fifth too high.</summary>
public sealed class SupplySetTooHigh : Fault
{
    public override string Goes => "an adjustable supply is set a fifth too high";

    public override string Costs => "motors that run hot and die young";

    public override Stage In => Stage.Powered;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        foreach (var panel in house.Panels)
            panel.Volts = panel.Sheet.Volts * 1.2;
        var unit = house.Wired.First();
        return At(unit.Key, (unit.Key, RunFacts.OpenVolts), (house.PanelSheets[0].Name, PanelTypeFacts.Supply)).And([.. house.Wired.Select(u => u.Key)]);
    }
}
