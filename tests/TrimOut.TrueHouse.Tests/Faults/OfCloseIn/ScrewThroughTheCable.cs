using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A drywall screw shorts a cable half way.</summary>
public sealed class ScrewThroughTheCable : Fault
{
    public override string Goes => "a drywall screw shorts a cable half way";

    public override string Costs => "a dead window, and a wall to open";

    public override Stage In => Stage.CloseIn;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Cable!.Ohms(Stage.Sheets, 20) > 0.45).One(dice) is not { } unit)
            return null;
        unit.Cable!.Damages.Add(Damage.Short(unit.Cable.Metres / 2, Stage.CloseIn, 0));
        return At(unit.Key, (unit.Key, RunFacts.FirstLoop), (unit.Key, RunFacts.SecondLoop)).Of(unit.Cable.Ohms(Stage.Sheets, 20) / 2, house.LoopsApart(unit));
    }
}
