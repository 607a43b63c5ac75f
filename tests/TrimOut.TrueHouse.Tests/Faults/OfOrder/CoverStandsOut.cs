using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>A head cover is chosen that is deeper than its reveal.</summary>
public sealed class CoverStandsOut : Fault
{
    public override string Goes => "a head cover is chosen that is deeper than its opening";

    public override string Costs => "a cover that stands out into the room";

    public override Stage In => Stage.Sized;

    public override IReadOnlyList<string> DoNotNameIt => ["entry-off-opening"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Cover.Depth is not null).One(dice) is not { } unit || unit.Kind.DepthNeeded > unit.Cover.Depth - 12)
            return null;
        unit.Opening.Depth = unit.Cover.Depth!.Value - 10;
        unit.Opening.InTheWay = "none";
        return At(unit.Key, (unit.Key, UnitFacts.HeadCover), (unit.Opening.Tag, WindowFacts.Depth), (unit.Cover.Name, HeadCoverFacts.Depth))
            .Of(10, house.TapeError);
    }
}
