using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Two cables have the same label at both ends.</summary>
public sealed class OneLabelOnTwoCables : Fault
{
    public override string Goes => "two cables carry one label at both ends";

    public override string Costs => "two units on each other's outputs";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Two(dice) is not var (first, second))
            return null;
        second.Cable!.LabelAtWindow = second.Cable.LabelAtPanel = first.Key;
        return At(second.Key, (second.Key, RunFacts.LabelAtWindow), (first.Key, RunFacts.LabelAtWindow)).And(first.Key);
    }
}
