using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>The day of the mains connection is later than the first volts.</summary>
public sealed class LiveBeforeItWasConnected : Fault
{
    public override string Goes => "the day of the mains connection is later than the first volts";

    public override string Costs => "somebody else connected it, or the paper is wrong";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Slips.Writes("P1", PanelFacts.ConnectedOn, Installer.Day(house.Days[Stage.Powered].AddDays(9)));
        return At("P1", ("P1", PanelFacts.ConnectedOn), (house.Wired.First().Key, RunFacts.OpenVolts)).And([.. house.Wired.Select(u => u.Key)]);
    }
}
