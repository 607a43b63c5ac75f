using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An opening is parted without the gaps and the ends that the sheet asks for.</summary>
public sealed class PartsWithoutAGap : Fault
{
    /// <summary>Two sixteenths of an inch: a lean that is less than that may be an error of the readings, and is not counted.</summary>
    private const double LeanNotCounted = 25.4 / 8;

    public override string Goes => "a wide opening is parted without the gaps and the ends that the sheet asks for";

    public override string Costs => "units that go in one by one and not together";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["gap-between-units-too-small"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => o.Units.Count > 1).One(dice) is not { } opening)
            return null;
        var kind = opening.Units[0].Kind;
        foreach (var unit in opening.Units)
            unit.PartWidth = house.OnTape((opening.Finished.PlumbWidth / opening.Units.Count) - 1);
        return At(opening.Tag, [.. opening.Units.Select(u => (u.Key, (Fact)UnitFacts.PartWidth)), (opening.Tag, WindowFacts.WidthTop),
            (kind.Name, CoveringKindFacts.GapBetween)])
            .Of(((opening.Units.Count - 1) * kind.GapLeast) + (2 * kind.EndClear) - opening.Units.Count,
                (house.TapeError * (opening.Units.Count + 1)) + LeanNotCounted);
    }
}
