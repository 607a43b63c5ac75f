using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Joints are made while the panel is live.</summary>
public sealed class SplicedUnderPower : Fault
{
    public override string Goes => "joints are made while the panel is live";

    public override string Costs => "a panel that dies with its first short";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Panels.One(dice) is not { } panel)
            return null;
        panel.OffForJoints = dice.Of([OffSeen.ItWasOn, OffSeen.NotLookedAt]);
        return At(panel.Name, (panel.Name, PanelFacts.OffSeen));
    }
}
