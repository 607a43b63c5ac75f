using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>An output gives nothing.</summary>
public sealed class DeadOutput : Fault
{
    public override string Goes => "an output gives nothing";

    public override string Costs => "a unit sent back that is whole";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, RunFacts.OpenVolts, "0.02");
        house.Slips.Writes(unit.Key, RunFacts.LoadedVolts, "0.01");
        return At(unit.Key, (unit.Key, RunFacts.OpenVolts), (house.PanelSheets[0].Name, PanelTypeFacts.Supply));
    }
}
