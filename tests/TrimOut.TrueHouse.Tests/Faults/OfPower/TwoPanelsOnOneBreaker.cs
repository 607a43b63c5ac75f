using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Two panels hang on one breaker that is made for one of them.</summary>
public sealed class TwoPanelsOnOneBreaker : Fault
{
    public override string Goes => "two panels hang on one breaker that is made for one of them";

    public override string Costs => "a breaker that trips whenever the house closes in the evening";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Panels.Count < 2)
            return null;
        var (one, other) = (house.Panels[0], house.Panels[1]);
        other.Breaker = one.Breaker;
        one.BreakerRating = other.BreakerRating = Math.Ceiling(one.Sheet.Input(house.Metric) + one.ElseOnBreaker);
        return At(one.Name, (one.Name, PanelFacts.BreakerRating), (other.Name, PanelFacts.Breaker)).And(other.Name)
            .Of(one.Sheet.Input(house.Metric) + other.ElseOnBreaker, 1);
    }
}
