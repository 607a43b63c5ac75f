using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>One of several units of an opening is ordered in another colour.</summary>
public sealed class OneOfSeveralInAnotherColour : Fault
{
    public override string Goes => "one of several units of an opening is ordered in another color";

    public override string Costs => "a unit that everybody sees, made once more";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => !o.LeftOut && o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        var unit = opening.Units[0];
        house.Slips.Writes(unit.Key, UnitFacts.Colour, unit.Colour == "Moss" ? "Chalk" : "Moss");
        return At(opening.Tag, (unit.Key, UnitFacts.Colour), (opening.Units[^1].Key, UnitFacts.Colour));
    }
}
