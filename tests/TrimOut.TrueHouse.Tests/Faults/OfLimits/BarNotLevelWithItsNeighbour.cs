using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>A bar stops half an inch above its neighbour's.</summary>
public sealed class BarNotLevelWithItsNeighbour : Fault
{
    public override string Goes => "a bar stops half an inch above its neighbor's";

    public override string Costs => "a ladder fetched again after the owner has seen it";

    public override Stage In => Stage.Limits;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Where(r => r.Moves.Count > 1).One(dice) is not { } remote)
            return null;
        remote.Moves[1].OpenGap += 13;
        return At(remote.Moves[1].Key, (remote.Moves[1].Key, UnitFacts.OpenGap), (remote.Moves[0].Key, UnitFacts.OpenGap))
            .And(remote.Room!.Name, remote.Moves[^1].Key).Of(13, 2 * house.TapeError);
    }
}
