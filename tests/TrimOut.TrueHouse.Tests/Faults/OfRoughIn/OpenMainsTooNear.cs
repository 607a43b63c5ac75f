using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A cable lies nearer than two inches to mains wiring that is not sheathed.</summary>
public sealed class OpenMainsTooNear : Fault
{
    public override string Goes => "a cable lies nearer than two inches to mains wiring that is not sheathed";

    public override string Costs => "a nail through both puts mains on the motors";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        (unit.Cable!.MainsDistance, unit.Cable.MainsSheathed) = (25, false);
        return At(unit.Key, (unit.Key, RunFacts.MainsDistance), (unit.Key, RunFacts.MainsSheathed)).Of(25, house.TapeError);
    }
}
