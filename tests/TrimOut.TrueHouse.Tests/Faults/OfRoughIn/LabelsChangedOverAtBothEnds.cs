using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Two cables carry each other's label at both ends.</summary>
public sealed class LabelsChangedOverAtBothEnds : Fault
{
    public override string Goes => "two cables carry each other's label at both ends";

    public override string Costs => "each unit is tested, landed and named as the other";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Two(dice) is not var (first, second))
            return null;
        first.Cable!.LabelAtWindow = first.Cable.LabelAtPanel = second.Key;
        second.Cable!.LabelAtWindow = second.Cable.LabelAtPanel = first.Key;
        return At(first.Key, (first.Key, RunFacts.LabelAtWindow), (second.Key, RunFacts.LabelAtWindow)).And(second.Key);
    }
}
