using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfReceive;

/// <summary>The label is right, and another window's unit is in the box.</summary>
public sealed class WrongUnitInTheBox : Fault
{
    public override string Goes => "the label is right, and another window's unit is in the box";

    public override string Costs => "a week lost on the ladder";

    public override Stage In => Stage.Received;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Where(u => u.PartWidth == 0).Two(dice) is not var (first, second)
            || Math.Abs(first.Opening.Finished.Width - second.Opening.Finished.Width) < 20)
            return null;
        first.CameWider = second.Opening.Finished.Width - first.Opening.Finished.Width;
        return At(first.Key, (first.Key, UnitFacts.DeliveredWidth), (first.Key, UnitFacts.OrderWidth)).Of(Math.Abs(first.CameWider), house.TapeError);
    }
}
