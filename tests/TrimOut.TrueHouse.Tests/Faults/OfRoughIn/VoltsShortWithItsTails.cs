using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Enough volts arrive at the end of the legs, and too few at the end of the tails.</summary>
public sealed class VoltsShortWithItsTails : Fault
{
    public override string Goes => "enough volts arrive at the end of the legs, and too few at the end of the tails";

    public override string Costs => "a motor that stalls half way, with a cable already pulled";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit || RandomWiring.ByVolts(house, unit.Kind, unit.Cable!.Sheet, house.Supply()) is not (< 70 and var longest))
            return null;
        var cable = unit.Cable;
        cable.Sheet.LongestRun = house.OnTape(longest * 1.5);
        cable.TailAtPanel = house.PlannedPanelTail / 1000;
        cable.TailAtWindow = Math.Max(cable.TailAtWindow, unit.Opening.Rough.Width);
        var tails = cable.TailAtPanel + (unit.Opening.Rough.Width / 1000);
        cable.Stretch(longest - (tails * 0.45));
        return At(unit.Key, [.. unit.Legs(), (unit.Kind.Name, CoveringKindFacts.LeastVolts), (Book.JobItself, HouseFacts.PanelTail),
            (unit.Opening.Tag, WindowFacts.RoughWidth)])
            .Of(tails * 0.55, (0.01 * cable.LegsMetres) + 0.31);
    }
}
