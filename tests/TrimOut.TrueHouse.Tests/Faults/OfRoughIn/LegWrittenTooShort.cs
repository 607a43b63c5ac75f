using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A leg is written down at half its length.</summary>
public sealed class LegWrittenTooShort : Fault
{
    public override string Goes => "a leg is written down at half its length";

    public override string Costs => "a run that is past its limits and does not look it";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var leg = unit.Cable!.Legs[1];
        house.Slips.Writes($"{unit.Key}/2", LegFacts.Length, house.TypedRun(leg.Metres / 2));
        return At(unit.Key, [(unit.Key, RunFacts.FirstLoop), .. unit.Legs(), (unit.Key, RunFacts.TailAtWindow)])
            .Of(leg.Metres * unit.Cable.Sheet.OhmsPerMetre(house.CableAtFirstTest), 2 * house.LoopError(unit));
    }
}
