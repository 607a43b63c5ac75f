using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A cable is crushed under a stud and most of its wires break.</summary>
public sealed class CableCrushed : Fault
{
    public override string Goes => "a cable is crushed under a stud and most of its wires break";

    public override string Costs => "a hot place in a wall, and a motor that stalls";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var ohms = (unit.Cable!.Ohms(Stage.Sheets, 20) * 0.12) + 0.12 + house.LoopsApart(unit) + dice.Between(0.05, 0.5);
        unit.Cable.Damages.Add(Damage.Joint(unit.Cable.Metres / 2, Stage.CloseIn, ohms));
        return At(unit.Key, (unit.Key, RunFacts.FirstLoop), (unit.Key, RunFacts.SecondLoop)).Of(ohms, house.LoopsApart(unit));
    }
}
