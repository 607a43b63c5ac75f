using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A unit is said to be paired with its remotes, and no remote moves it.</summary>
public sealed class MovedByNoRemote : Fault
{
    public override string Goes => "a unit is said to be paired with its remotes, and no remote moves it";

    public override string Costs => "a unit that moves by telephone only";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Where(r => r.Moves.Count > 1).One(dice) is not { } remote)
            return null;
        var unit = remote.Moves[0];
        remote.Moves.Remove(unit);
        remote.Presets["Evening"].Remove(unit);
        return From(Stage.Paired, unit.Key);
    }
}
