using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>Plaster wets a bruised cable, and current leaks from one conductor to the other.</summary>
public sealed class DampInTheWall : Fault
{
    public override string Goes => "plaster wets a bruised cable, and current leaks from one conductor to the other";

    public override string Costs => "a unit that moves by itself, or a panel that switches off";

    public override Stage In => Stage.CloseIn;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Damages.Add(Damage.Short(unit.Cable.Metres / 2, Stage.CloseIn, 9_000));
        return At(unit.Key, (unit.Key, RunFacts.SecondApart));
    }
}
