using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The minimum volts of a kind are typed from the line above, more than its motor is made for.</summary>
public sealed class LeastVoltsAboveMotorVolts : Fault
{
    public override string Goes => "the minimum volts of a kind are typed from the line above, more than its motor is made for";

    public override string Costs => "every run looks too long, and somebody buys thicker cable for nothing";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { } kind)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.LeastVolts, Installer.Number(Math.Round(kind.MotorVolts * 1.2, 1)));
        return At(kind.Name, (kind.Name, CoveringKindFacts.LeastVolts), (kind.Name, CoveringKindFacts.MotorVolts)).And(house.About(kind));
    }
}
