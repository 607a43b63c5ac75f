using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>One of several units of an opening is ordered in the fabric of another room.</summary>
public sealed class OneOfSeveralInAnotherFabric : Fault
{
    public override string Goes => "one of several units of an opening is ordered in the fabric of another room";

    public override string Costs => "a unit that everybody sees, made once more";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => !o.LeftOut && o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        var unit = opening.Units[^1];
        house.Slips.Writes(unit.Key, UnitFacts.Fabric, unit.Fabric == "Twill" ? "Linen weave" : "Twill");
        return At(opening.Tag, (unit.Key, UnitFacts.Fabric), (opening.Units[0].Key, UnitFacts.Fabric));
    }
}
