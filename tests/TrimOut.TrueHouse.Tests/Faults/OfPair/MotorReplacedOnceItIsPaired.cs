using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A motor is replaced once it is paired, and its marks stay.</summary>
public sealed class MotorReplacedOnceItIsPaired : Fault
{
    public override string Goes => "a motor is replaced once it is paired, and its marks stay";

    public override string Costs => "a unit that no remote moves, on the day of the handover";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        house.Slips.Does(Stage.Paired, i => i.Book.Correct(unit.Key, UnitFacts.Serial, "NEW-0001"));
        return From(Stage.Paired, unit.Key);
    }
}
