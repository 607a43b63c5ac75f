using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>Two runs are landed on one output.</summary>
public sealed class TwoRunsOnOneOutput : Fault
{
    public override string Goes => "two runs are landed on one output";

    public override string Costs => "two motors that start together and stall";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Two(dice) is not var (first, second))
            return null;
        (second.Panel, second.Output) = (first.Panel, first.Output);
        return At(second.Key, (second.Key, RunFacts.Output), (first.Key, RunFacts.Output), (house.PanelSheets[0].Name, PanelTypeFacts.UnitsPerOutput))
            .And(first.Key);
    }
}
