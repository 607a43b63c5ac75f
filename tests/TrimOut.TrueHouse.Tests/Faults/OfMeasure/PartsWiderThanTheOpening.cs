using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>The parts of a wide opening are more together than it is.</summary>
public sealed class PartsWiderThanTheOpening : Fault
{
    public override string Goes => "the parts of a wide opening are more together than it is";

    public override string Costs => "units that go in one by one and not together";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["gap-between-units-too-small"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        foreach (var unit in opening.Units)
            unit.PartWidth = house.OnTape((opening.Finished.PlumbWidth / opening.Units.Count) + 8);
        return At(opening.Tag, [.. opening.Units.Select(u => (u.Key, (Fact)UnitFacts.PartWidth)), (opening.Tag, WindowFacts.WidthTop)]).Of(16, house.TapeError);
    }
}
