using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A run is landed on a second panel that gives other volts than its motor is made for.</summary>
public sealed class LandedOnThePanelOfOtherVolts : Fault
{
    public override string Goes => "a run is landed on a second panel that gives other volts than its motor is made for";

    public override string Costs => "a burned motor";

    public override Stage In => Stage.Powered;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var sheet = house.PanelSheets[0];
        if (house.Wired.One(dice) is not { } unit || ClassTwo.Voltages.Where(v => v > sheet.Volts * 1.25).Cast<double?>().FirstOrDefault() is not { } volts)
            return null;
        var other = new PanelSheet
        {
            Name = "Other box",
            Outputs = 4,
            Volts = volts,
            PerOutput = Math.Min(sheet.PerOutput, ClassTwo.MostOnNameplate(volts)),
            Total = sheet.Total,
            UnitsPerOutput = 1,
        };
        var panel = new RealPanel { Name = "P9", Sheet = other, Volts = volts, Breaker = "29", ElseOnBreaker = 1, BreakerRating = 63 };
        house.PanelSheets.Add(other);
        house.Panels.Add(panel);
        (unit.Panel, unit.Output) = (panel, 1);
        return At(unit.Key, (unit.Key, RunFacts.Panel), (other.Name, PanelTypeFacts.Supply), (unit.Kind.Name, CoveringKindFacts.MotorVolts)).And("P9");
    }
}
