using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A way is planned on which too few volts arrive.</summary>
public sealed class VoltsShortAtTheUnit : Fault
{
    public override string Goes => "a way is planned on which too few volts arrive";

    public override string Costs => "a motor that stalls half way, taken for a bad motor";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit || RandomWiring.ByVolts(house, unit.Kind, unit.Cable!.Sheet, house.Supply()) is not (< 100 and var longest))
            return null;
        unit.Cable.Sheet.LongestRun = house.OnTape(longest * 1.5);
        unit.Cable.Stretch(longest * 1.1);
        return At(unit.Key, [.. unit.Legs(), (unit.Kind.Name, CoveringKindFacts.LeastVolts), (unit.Cable.Sheet.Name, CableTypeFacts.Conductor),
            (house.PanelSheets[0].Name, PanelTypeFacts.Supply)])
            .Of(longest * 0.1, (0.01 * longest * 1.1) + 0.31);
    }
}
