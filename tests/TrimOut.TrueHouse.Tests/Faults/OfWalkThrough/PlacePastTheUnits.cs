using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>A unit is written with a place from the left that its window does not have.</summary>
public sealed class PlacePastTheUnits : Fault
{
    public override string Goes => "a unit is written with a place from the left that its window does not have";

    public override string Costs => "a part, a cable and a box that nobody knows where to put";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        opening.Units[^1].Position = opening.Units.Count + 1;
        return At(opening.Tag, (opening.Units[^1].Key, UnitFacts.Position));
    }
}
