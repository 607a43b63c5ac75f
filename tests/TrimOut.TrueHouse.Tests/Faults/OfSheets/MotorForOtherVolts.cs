using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>A motor made for half the volts of the panels is planned.</summary>
public sealed class MotorForOtherVolts : Fault
{
    public override string Goes => "a motor made for half the volts of the panels is planned";

    public override string Costs => "a burned motor on the day of the first power, or one that only hums";

    public override Stage In => Stage.Sheets;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { } kind)
            return null;
        (kind.MotorVolts, kind.LeastVolts) = (Math.Round(house.Supply() / 2, 1), Math.Round(house.Supply() * 0.4, 1));
        return At(kind.Name, (kind.Name, CoveringKindFacts.MotorVolts), (house.PanelSheets[0].Name, PanelTypeFacts.Supply)).And(house.About(kind)).And("P");
    }
}
