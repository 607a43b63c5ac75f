using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A way is planned that is longer than the sheet's table allows for the cable.</summary>
public sealed class RunPastTheTable : Fault
{
    public override string Goes => "a way is planned that is longer than the sheet's table allows for the cable";

    public override string Costs => "the maker answers for nothing on that run";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.Stretch(unit.Cable!.Sheet.LongestRun * 1.1);
        return At(unit.Key, [.. unit.Legs(), (unit.Cable.Sheet.Name, CableTypeFacts.LongestRun)]);
    }
}
