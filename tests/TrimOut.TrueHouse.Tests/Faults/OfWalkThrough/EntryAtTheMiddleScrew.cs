using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>The cable is marked to leave the wall where the middle screw goes in.</summary>
public sealed class EntryAtTheMiddleScrew : Fault
{
    public override string Goes => "the cable is marked to leave the wall where the middle screw goes in";

    public override string Costs => "a screw through the cable, behind a head rail";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.MiddleScrew is not null).One(dice) is not { } unit)
            return null;
        var (rough, finished, off) = (unit.Opening.Rough.Width, unit.Opening.Finished.Width, unit.Kind.MiddleScrew!.Value);
        var away = unit.EntrySide == Side.Left ? off : -off;
        (unit.EntryFromJamb, unit.EntryAsBuilt) = (house.OnTape((rough / 2) + away), (finished / 2) + away);
        unit.Cable!.TailAtWindow = unit.Cable.TailFound = rough + unit.Kind.LeadBehind + 120;
        return At(unit.Key, (unit.Key, UnitFacts.EntryFromJamb), (unit.Opening.Tag, WindowFacts.RoughWidth),
            (unit.Kind.Name, CoveringKindFacts.MiddleScrew)).Of(12, house.TapeError);
    }
}
