using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An uncovered roll outside a door hangs below its head.</summary>
public sealed class RollOverADoor : Fault
{
    public override string Goes => "an uncovered roll outside a door hangs below its head";

    public override string Costs => "a roll that is found with the forehead";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["screw-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Kind.Form == RaisedForm.Roll && u.Opening.Units.Count == 1).One(dice) is not { } unit)
            return null;
        var opening = unit.Opening;
        opening.MountOutside(house);
        unit.Cover = house.Covers[0];
        opening.HeadAbove = house.UpOnTape(unit.Kind.BracketDown + 2);
        var below = unit.Kind.Raised(opening.Finished.Height) - opening.HeadAbove;
        if (below < 15)
            return null;
        opening.ClearHeight = house.OnTape(opening.Finished.Height - 2);
        return At(unit.Key, (opening.Tag, WindowFacts.ClearHeight), (opening.Tag, WindowFacts.HeadAbove), (unit.Kind.Name, CoveringKindFacts.Tube))
            .Of(below, 4 * house.TapeError);
    }
}
