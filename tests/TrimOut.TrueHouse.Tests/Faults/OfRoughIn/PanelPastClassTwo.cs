using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A panel gives more from an output than a Class 2 supply may.</summary>
public sealed class PanelPastClassTwo : Fault
{
    public override string Goes => "a panel gives more from an output than a Class 2 supply may";

    public override string Costs => "loose low-voltage wiring on a supply that can set it alight";

    public override Stage In => Stage.Routed;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var sheet = house.PanelSheets[0];
        sheet.PerOutput = Math.Round(ClassTwo.MostOnNameplate(sheet.Volts) * 1.3, 2);
        sheet.Total = Math.Max(sheet.Total, sheet.PerOutput);
        return At("P", (sheet.Name, PanelTypeFacts.OutputCurrent), (sheet.Name, PanelTypeFacts.Supply), ("P1", PanelFacts.Type)).And(sheet.Name);
    }
}
