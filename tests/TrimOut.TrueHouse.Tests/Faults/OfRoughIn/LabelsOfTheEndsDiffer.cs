using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>The two ends of a cable are labelled differently.</summary>
public sealed class LabelsOfTheEndsDiffer : Fault
{
    public override string Goes => "the two ends of a cable are labeled differently";

    public override string Costs => "an afternoon with a buzzer";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.LabelAtPanel = "W99";
        return At(unit.Key, (unit.Key, RunFacts.LabelAtPanel), (unit.Key, RunFacts.LabelAtWindow));
    }
}
