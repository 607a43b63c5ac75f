using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A staple shorts a cable in its last part before the window.</summary>
public sealed class ShortNearTheWindow : Fault
{
    public override string Goes => "a staple shorts a cable in its last part before the window";

    public override string Costs => "a dead window, and a wall to open";

    public override Stage In => Stage.Pulled;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Blind(Stage.Pulled).Where(b => b.Ohms < b.All).One(dice) is not { } blind)
            return null;
        var (unit, cable) = (blind.Unit, blind.Unit.Cable!);
        cable.Damages.Add(Damage.Short(cable.Metres * (1 - (blind.Ohms / blind.All)), Stage.Pulled, 0));
        return At(unit.Key, (unit.Key, RunFacts.FirstApart)).Of(blind.Ohms, blind.Sure);
    }
}
