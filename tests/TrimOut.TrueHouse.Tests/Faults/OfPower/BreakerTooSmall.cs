using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A panel hangs on a breaker that is shared and full.</summary>
public sealed class BreakerTooSmall : Fault
{
    public override string Goes => "a panel hangs on a breaker that is shared and full";

    public override string Costs => "a house that goes dark when all units move";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var panel = house.Panels[0];
        panel.ElseOnBreaker = panel.BreakerRating;
        return At(panel.Name, (panel.Name, PanelFacts.BreakerRating), (panel.Name, PanelFacts.ElseOnBreaker));
    }
}
