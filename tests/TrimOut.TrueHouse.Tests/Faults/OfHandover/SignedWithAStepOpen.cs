using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHandover;

/// <summary>The house is signed off, and a unit was never moved by hand.</summary>
public sealed class SignedWithAStepOpen : Fault
{
    public override string Goes => "the house is signed off, and a unit was never moved by hand";

    public override string Costs => "a rub that is found by the owner";

    public override Stage In => Stage.Handover;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        house.Slips.LeavesUnmarked(unit.Key, "moves-free");
        return From(Stage.Handover, unit.Key, Book.JobItself);
    }
}
