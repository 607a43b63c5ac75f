using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>One cable lies in a wall that will never be opened again, and no second one beside it.</summary>
public sealed class NoSpareCable : Fault
{
    public override string Goes => "one cable lies in a wall that will never be opened again, and no second one beside it";

    public override string Costs => "a wall, for the first cable that fails";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Spares = 0;
        return At(unit.Key, (unit.Key, RunFacts.SpareCables));
    }
}
