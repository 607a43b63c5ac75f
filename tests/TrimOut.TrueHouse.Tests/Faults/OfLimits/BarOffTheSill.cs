using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>A bar stops above the sill.</summary>
public sealed class BarOffTheSill : Fault
{
    public override string Goes => "a bar stops above the sill";

    public override string Costs => "light under every blackout";

    public override Stage In => Stage.Limits;

    public override IReadOnlyList<string> DoNotNameIt => ["bars-not-level"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Where(u => !u.Opening.Outside).One(dice) is not { } unit)
            return null;
        unit.CloseGap = 9;
        return At(unit.Key, (unit.Key, UnitFacts.CloseGap)).Of(9 - 3.2, house.TapeError);
    }
}
