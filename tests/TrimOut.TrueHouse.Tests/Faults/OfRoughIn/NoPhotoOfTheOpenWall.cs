using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>The wall is said to be photographed, and no picture is there.</summary>
public sealed class NoPhotoOfTheOpenWall : Fault
{
    public override string Goes => "the wall is said to be photographed, and no picture is there";

    public override string Costs => "a search with a magnet behind fresh paint";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, RunFacts.Photo);
        return From(Stage.Pulled, unit.Key);
    }
}
