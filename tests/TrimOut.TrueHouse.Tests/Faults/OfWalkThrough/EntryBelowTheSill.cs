using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The entry is typed farther below the head than the opening is high.</summary>
public sealed class EntryBelowTheSill : Fault
{
    public override string Goes => "the entry is typed farther below the head than the opening is high";

    public override string Costs => "a cable below the sill, and a tail that is reckoned for it";

    public override Stage In => Stage.WalkThrough;

    public override IReadOnlyList<string> DoNotNameIt => ["tail-short-of-motor"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Writes(unit.Key, UnitFacts.EntryBelowHead, house.Typed(unit.Opening.Rough.Height + 90));
        return At(unit.Key, (unit.Key, UnitFacts.EntryBelowHead), (unit.Opening.Tag, WindowFacts.RoughHeight));
    }
}
