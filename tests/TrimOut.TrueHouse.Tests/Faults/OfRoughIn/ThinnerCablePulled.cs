using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A thinner cable is pulled than is written down.</summary>
public sealed class ThinnerCablePulled : Fault
{
    public override string Goes => "a thinner cable is pulled than is written down";

    public override string Costs => "too few volts in the heat of the first summer";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var (thick, thin) = (house.Cables[0], house.Cables[1]);
        if (house.Wired.Where(u => u.Cable!.Sheet == thick && u.Cable.Metres > 9).One(dice) is not { } unit)
            return null;
        var before = unit.Cable!.Ohms(Stage.Sheets, house.CableAtFirstTest);
        unit.Cable.Pulled = thin;
        return At(unit.Key, [(unit.Key, RunFacts.FirstLoop), .. unit.Legs(), (thick.Name, CableTypeFacts.Conductor)])
            .Of(unit.Cable.Ohms(Stage.Sheets, house.CableAtFirstTest) - before, 2 * house.LoopError(unit));
    }
}
