using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>A head cover is chosen in which the roll does not turn.</summary>
public sealed class RollTooLargeForItsCover : Fault
{
    public override string Goes => "a head cover is chosen in which the roll does not turn";

    public override string Costs => "a roll that rubs and stops short";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Cover.RoomInside is not null).MaxBy(u => u.Opening.Finished.Height) is not { } unit)
            return null;
        var roll = unit.Kind.Raised(unit.Opening.Finished.Height + unit.Opening.HeadAbove);
        var small = unit.Cover with { RoomInside = house.OnTape(roll - (4 * unit.Kind.Fabric) - 6) };
        house.Covers[1] = small;
        foreach (var other in house.Units.Where(u => u.Cover.RoomInside is not null))
            other.Cover = small;
        return At(unit.Key, (unit.Key, UnitFacts.HeadCover), (small.Name, HeadCoverFacts.RoomInside), (unit.Kind.Name, CoveringKindFacts.Tube))
            .Of(4, 2 * house.TapeError);
    }
}
