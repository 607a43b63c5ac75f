using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>A knife goes through some wires of a conductor.</summary>
public sealed class CableNicked : Fault
{
    public override string Goes => "a knife goes through some wires of a conductor";

    public override string Costs => "a joint that gets worse, behind paint";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Blind(Stage.CloseIn).One(dice) is not { } blind)
            return null;
        var unit = blind.Unit;
        unit.Cable!.Damages.Add(Damage.Joint(unit.Cable.Metres / 2, Stage.CloseIn, blind.Ohms));
        return At(unit.Key, (unit.Key, RunFacts.FirstLoop), (unit.Key, RunFacts.SecondLoop)).Of(blind.Ohms, blind.Sure);
    }
}
