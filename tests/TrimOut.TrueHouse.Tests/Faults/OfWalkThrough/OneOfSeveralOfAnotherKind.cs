using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>One of several units of an opening is planned of another kind.</summary>
public sealed class OneOfSeveralOfAnotherKind : Fault
{
    public override string Goes => "one of several units of an opening is planned of another kind";

    public override string Costs => "a unit that hangs and stacks otherwise than those beside it";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => !o.LeftOut && o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        var unit = opening.Units[^1];
        house.Slips.Writes(unit.Key, UnitFacts.Kind, house.Kinds.First(k => k != unit.Kind).Name);
        return At(opening.Tag, (unit.Key, UnitFacts.Kind), (opening.Units[0].Key, UnitFacts.Kind));
    }
}
