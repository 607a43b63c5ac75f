using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A hand of cable is left in the mechanical room where a tail was planned.</summary>
public sealed class PanelTailTooShort : Fault
{
    public override string Goes => "a hand of cable is left in the mechanical room where a tail was planned";

    public override string Costs => "a joint outside the panel for every output that moves";

    public override Stage In => Stage.Pulled;

    public override IReadOnlyList<string> DoNotNameIt => ["loop-off-length"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        unit.Cable!.TailAtPanel = 0.15;
        return At(unit.Key, (unit.Key, RunFacts.TailAtPanel), (Book.JobItself, HouseFacts.PanelTail)).Of(1000, house.TapeError);
    }
}
