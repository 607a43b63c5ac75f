using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable is marked to leave the wall at the far jamb.</summary>
public sealed class EntryOnTheFarSide : Fault
{
    public override string Goes => "the cable is marked to leave the wall at the far jamb";

    public override string Costs => "a lead in sight across the whole head";

    public override Stage In => Stage.WalkThrough;

    public override IReadOnlyList<string> DoNotNameIt => ["tail-short-of-motor"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        unit.EntrySide = unit.Lead == Side.Left ? Side.Right : Side.Left;
        return At(unit.Key, (unit.Key, UnitFacts.EntrySide), (unit.Key, UnitFacts.LeadSide));
    }
}
