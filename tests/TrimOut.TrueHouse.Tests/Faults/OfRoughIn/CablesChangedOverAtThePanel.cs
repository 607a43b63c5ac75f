using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>Two cables are labelled as each other in the mechanical room.</summary>
public sealed class CablesChangedOverAtThePanel : Fault
{
    public override string Goes => "two cables are labelled as each other in the mechanical room";

    public override string Costs => "each unit moves when the other should";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Two(dice) is not var (first, second))
            return null;
        (first.Cable!.ComesOutAs, second.Cable!.ComesOutAs) = (second.Cable, first.Cable);
        var (a, b) = (first.Cable.Ohms(Stage.Pulled, house.CableAtFirstTest), second.Cable.Ohms(Stage.Pulled, house.CableAtFirstTest));
        return At(first.Key, [(first.Key, RunFacts.FirstLoop), .. first.Legs(), (first.Key, RunFacts.TailAtWindow)]).And(second.Key)
            .Of(Math.Abs(a - b), Math.Max(house.LoopError(first), house.LoopError(second)));
    }
}
