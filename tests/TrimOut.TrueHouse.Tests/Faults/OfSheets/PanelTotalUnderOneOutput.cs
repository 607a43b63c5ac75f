using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>What a panel gives all together is typed less than what one output gives.</summary>
public sealed class PanelTotalUnderOneOutput : Fault
{
    public override string Goes => "what a panel gives all together is typed less than what one output gives";

    public override string Costs => "a plan of panels that is wrong everywhere";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var sheet = house.PanelSheets[0];
        house.Slips.Writes(sheet.Name, PanelTypeFacts.TotalCurrent, Installer.Number(Math.Round(sheet.PerOutput / 2, 2)));
        return At(sheet.Name, (sheet.Name, PanelTypeFacts.TotalCurrent), (sheet.Name, PanelTypeFacts.OutputCurrent)).And("P");
    }
}
