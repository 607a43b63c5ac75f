using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>An outside mount starts so low that its brackets hang over the opening.</summary>
public sealed class HeadTooLowForTheBrackets : Fault
{
    public override string Goes => "an outside mount starts so low that its brackets hang over the opening";

    public override string Costs => "brackets with nothing behind them";

    public override Stage In => Stage.Measured;

    public override IReadOnlyList<string> DoNotNameIt => ["screw-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Opening.Units.Count == 1 && u.Kind.BracketDown > 30).One(dice) is not { } unit)
            return null;
        unit.Opening.MountOutside(house);
        unit.Opening.HeadAbove = house.OnTape(unit.Kind.BracketDown - 12);
        return At(unit.Key, (unit.Opening.Tag, WindowFacts.HeadAbove), (unit.Kind.Name, CoveringKindFacts.EndBracketDown)).Of(12, house.TapeError);
    }
}
