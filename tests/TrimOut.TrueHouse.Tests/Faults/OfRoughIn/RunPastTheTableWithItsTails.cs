using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>The legs of a way are within the table, and its tails make it too long.</summary>
public sealed class RunPastTheTableWithItsTails : Fault
{
    public override string Goes => "the legs of a way are within the table, and its tails make it too long";

    public override string Costs => "a cable cut to a length that may not be used";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var cable = unit.Cable!;
        cable.TailAtPanel = house.PlannedPanelTail / 1000;
        var tails = cable.TailAtPanel + (unit.Opening.Rough.Width / 1000);
        cable.Stretch(cable.Sheet.LongestRun - (tails * 0.45));
        cable.TailAtWindow = Math.Max(cable.TailAtWindow, unit.Opening.Rough.Width);
        return At(unit.Key, [.. unit.Legs(), (cable.Sheet.Name, CableTypeFacts.LongestRun), (Book.JobItself, HouseFacts.PanelTail),
            (unit.Opening.Tag, WindowFacts.RoughWidth)])
            .Of(tails * 0.55, (0.01 * cable.LegsMetres) + 0.31);
    }
}
