using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The distance of an entry is typed without its point, farther from the jamb than the opening is wide.</summary>
public sealed class EntryPastTheOpening : Fault
{
    public override string Goes => "the distance of an entry is typed without its point, farther from the jamb than the opening is wide";

    public override string Costs => "a hole in the wall of the next room";

    public override Stage In => Stage.WalkThrough;

    public override IReadOnlyList<string> DoNotNameIt => ["tail-short-of-motor", "entry-under-middle-screw"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.EntryFromJamb, house.Typed(unit.Opening.Rough.Width + 150));
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (unit.Opening.Tag, WindowFacts.RoughWidth));
    }
}
