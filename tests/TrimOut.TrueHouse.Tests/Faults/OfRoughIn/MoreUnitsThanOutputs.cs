using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>One unit more is planned than the panels have outputs.</summary>
public sealed class MoreUnitsThanOutputs : Fault
{
    public override string Goes => "one unit more is planned than the panels have outputs";

    public override string Costs => "no output for the last cable, and no place on the wall for another panel";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Panels.Count > 1 || house.Wired.Count() < 3)
            return null;
        var sheet = house.PanelSheets[0];
        sheet.Outputs = house.Wired.Count() - 1;
        house.Wired.Last().Panel = null;
        return At(Book.JobItself, (sheet.Name, PanelTypeFacts.Outputs), ("P1", PanelFacts.Type)).And("P1");
    }
}
