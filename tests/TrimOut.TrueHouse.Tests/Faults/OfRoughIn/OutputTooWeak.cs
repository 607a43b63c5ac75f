using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>An output gives less than its unit draws when it starts.</summary>
public sealed class OutputTooWeak : Fault
{
    public override string Goes => "an output gives less than its unit draws when it starts";

    public override string Costs => "a unit that stops as if it were broken";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.PanelSheets[0].PerOutput = Math.Round(unit.Draws() * 0.8, 2);
        return At(unit.Key, (house.PanelSheets[0].Name, PanelTypeFacts.OutputCurrent), (unit.Kind.Name, CoveringKindFacts.StartingCurrent),
            ("P1", PanelFacts.Type)).And("P");
    }
}
