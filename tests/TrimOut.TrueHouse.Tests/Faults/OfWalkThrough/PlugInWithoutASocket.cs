using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>A plug-in supply is planned where no socket is.</summary>
public sealed class PlugInWithoutASocket : Fault
{
    public override string Goes => "a plug-in supply is planned where no outlet is";

    public override string Costs => "a cord across the wall";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        unit.Power = PowerSource.PlugIn;
        unit.Socket = dice.Of([SocketNear.TooFar, SocketNear.None]);
        return At(unit.Key, (unit.Key, UnitFacts.Socket));
    }
}
