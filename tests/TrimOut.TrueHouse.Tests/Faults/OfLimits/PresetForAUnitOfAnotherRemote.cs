using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>A preset is to move a unit that its remote does not move.</summary>
public sealed class PresetForAUnitOfAnotherRemote : Fault
{
    public override string Goes => "a preset is to move a unit that its remote does not move";

    public override string Costs => "a preset that leaves one window as it was";

    public override Stage In => Stage.Limits;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Two(dice) is not var (one, other) || other.Moves.Count == 0)
            return null;
        one.Presets["Evening"].Add(other.Moves[0]);
        return At(one.Name, ($"{one.Name}/Evening", PresetFacts.Position), (one.Name, RemoteFacts.Moves)).And(other.Moves[0].Key);
    }
}
