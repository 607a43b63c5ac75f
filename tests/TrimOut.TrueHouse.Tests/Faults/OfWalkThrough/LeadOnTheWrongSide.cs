using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>Left and right are said as seen from outside.</summary>
public sealed class LeadOnTheWrongSide : Fault
{
    public override string Goes => "left and right are said as seen from outside";

    public override string Costs => "a cable on the side where no motor is: a wall after drywall";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.Motor != MotorEnd.Either).One(dice) is not { } unit)
            return null;
        unit.Lead = unit.EntrySide = unit.Lead == Side.Left ? Side.Right : Side.Left;
        return At(unit.Key, (unit.Key, UnitFacts.LeadSide), (unit.Kind.Name, CoveringKindFacts.MotorEnd));
    }
}
