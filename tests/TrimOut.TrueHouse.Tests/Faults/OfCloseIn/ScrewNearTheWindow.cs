using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A drywall screw shorts a cable in its last part before the window.</summary>
public sealed class ScrewNearTheWindow : Fault
{
    public override string Goes => "a drywall screw shorts a cable in its last part before the window";

    public override string Costs => "a dead window, and a wall to open";

    public override Stage In => Stage.CloseIn;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Blind(Stage.CloseIn).Where(b => b.Ohms < b.All).One(dice) is not { } blind)
            return null;
        var (unit, cable) = (blind.Unit, blind.Unit.Cable!);
        cable.Damages.Add(Damage.Short(cable.Metres * (1 - (blind.Ohms / blind.All)), Stage.CloseIn, 0));
        return At(unit.Key, (unit.Key, RunFacts.SecondApart)).Of(blind.Ohms, blind.Sure);
    }
}
