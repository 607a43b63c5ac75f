using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>Two boxes are put to each other's window.</summary>
public sealed class BoxesChangedOver : Fault
{
    public override string Goes => "two boxes are put to each other's window";

    public override string Costs => "two units that hang a little wrong";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Two(dice) is not var (first, second))
            return null;
        (first.BoxLabel, second.BoxLabel) = (second.Key, first.Key);
        return At(first.Key, (first.Key, UnitFacts.BoxLabel)).And(second.Key);
    }
}
