using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A cable is not tested after the drywall, and the job goes on.</summary>
public sealed class SecondTestLeftOut : Fault
{
    public override string Goes => "a cable is not tested after the drywall, and the job goes on";

    public override string Costs => "damage that is found when the painter has gone";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, RunFacts.SecondLoop);
        house.Slips.LeavesUnmarked(unit.Key, "tested-second");
        return From(Stage.Measured, unit.Key);
    }
}
