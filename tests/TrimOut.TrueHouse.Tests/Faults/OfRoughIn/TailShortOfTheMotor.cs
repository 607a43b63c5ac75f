using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A tail is left that does not reach the motor across the head.</summary>
public sealed class TailShortOfTheMotor : Fault
{
    public override string Goes => "a tail is left that does not reach the motor across the head";

    public override string Costs => "a splice in sight";

    public override Stage In => Stage.Pulled;

    public override IReadOnlyList<string> DoNotNameIt => ["entry-off-lead-side", "tail-under-whole-width"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => u.Kind.Motor != MotorEnd.Either).One(dice) is not { } unit)
            return null;
        unit.EntrySide = unit.Lead == Side.Left ? Side.Right : Side.Left;
        var reach = RandomWiring.Reach(unit, unit.Opening.Finished.Width);
        unit.Cable!.TailAtWindow = reach - 50;
        unit.Cable.TailFound = reach - 60;
        return At(unit.Key, (unit.Key, RunFacts.TailAtWindow), (unit.Key, UnitFacts.EntryFromJamb), (unit.Kind.Name, CoveringKindFacts.LeadBehind))
            .Of(50, 3 * house.TapeError);
    }
}
