using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>Two units of one window have the same place from the left.</summary>
public sealed class TwoUnitsAtOnePlace : Fault
{
    public override string Goes => "two units of one window have the same place from the left";

    public override string Costs => "parts, cables and boxes of the two change places";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        opening.Units[1].Position = opening.Units[0].Position;
        return At(opening.Tag, (opening.Units[0].Key, UnitFacts.Position), (opening.Units[1].Key, UnitFacts.Position));
    }
}
