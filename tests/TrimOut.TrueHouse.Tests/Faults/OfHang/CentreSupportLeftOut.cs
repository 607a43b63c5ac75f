using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>A wide unit is hung without its centre support.</summary>
public sealed class CentreSupportLeftOut : Fault
{
    public override string Goes => "a wide unit is hung without its center support";

    public override string Costs => "a head rail that sags";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        unit.NeedCentreSupport();
        house.Slips.LeavesUnmarked(unit.Key, "centre-support-clear");
        return From(Stage.Powered, unit.Key);
    }
}
