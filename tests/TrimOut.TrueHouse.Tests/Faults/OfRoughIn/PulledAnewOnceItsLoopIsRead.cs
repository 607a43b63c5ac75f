using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A run is pulled anew in another cable once its loop is read.</summary>
public sealed class PulledAnewOnceItsLoopIsRead : Fault
{
    public override string Goes => "a run is pulled anew in another cable once its loop is read";

    public override string Costs => "a first test of a cable that lies in the waste";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit || house.Cables.FirstOrDefault(c => c != unit.Cable!.Sheet) is not { } other)
            return null;
        house.Slips.Does(Stage.Pulled, i =>
        {
            unit.Cable!.Sheet = unit.Cable.Pulled = other;
            i.Book.Correct(unit.Key, RunFacts.Cable, other.Name);
        });
        return From(Stage.Pulled, unit.Key);
    }
}
