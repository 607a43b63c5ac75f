using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A cable touches mains wiring that is not sheathed.</summary>
public sealed class OpenMainsTouched : Fault
{
    public override string Goes => "a cable touches mains wiring that is not sheathed";

    public override string Costs => "mains on the motors";

    public override Stage In => Stage.Pulled;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        (unit.Cable!.MainsDistance, unit.Cable.MainsSheathed) = (0, false);
        house.Slips.Writes(unit.Key, RunFacts.MainsDistance, "0");
        return At(unit.Key, (unit.Key, RunFacts.MainsDistance), (unit.Key, RunFacts.MainsSheathed)).Of(50, house.TapeError);
    }
}
