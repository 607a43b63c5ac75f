using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>The open limit leaves every bar of a room in front of the glass.</summary>
public sealed class BarsHangInTheGlass : Fault
{
    public override string Goes => "the open limit leaves every bar of a room in front of the glass";

    public override string Costs => "a view with a bar across it";

    public override Stage In => Stage.Limits;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Where(r => r.Moves.Count > 0).One(dice) is not { } remote)
            return null;
        foreach (var unit in remote.Moves)
        {
            unit.OpenGap = 0;
            house.Slips.Writes(unit.Key, UnitFacts.OpenGap, "0");
        }
        return At(remote.Moves[0].Key, (remote.Moves[0].Key, UnitFacts.OpenGap)).And([.. remote.Moves.Select(u => u.Key)]).Of(12, house.TapeError);
    }
}
