using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>One serial is written to two units.</summary>
public sealed class OneSerialTwice : Fault
{
    public override string Goes => "one serial is written to two units";

    public override string Costs => "a warranty that covers neither";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Two(dice) is not var (first, second))
            return null;
        second.Serial = first.Serial;
        return At(second.Key, (second.Key, UnitFacts.Serial), (first.Key, UnitFacts.Serial)).And(first.Key);
    }
}
