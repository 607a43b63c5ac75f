using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A raised stack hangs into a door.</summary>
public sealed class StackInTheWayThrough : Fault
{
    public override string Goes => "a raised stack hangs into a door";

    public override string Costs => "a bar that is found with the forehead";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.Form == RaisedForm.Stack).One(dice) is not { } unit)
            return null;
        unit.Opening.ClearHeight = house.OnTape(unit.Opening.Finished.Height - unit.Kind.Raised(unit.Opening.Finished.Height) + 40);
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.ClearHeight), (unit.Kind.Name, CoveringKindFacts.StackFixed),
            (unit.Opening.Tag, WindowFacts.HeightLeft)).Of(40, 3 * house.TapeError);
    }
}
