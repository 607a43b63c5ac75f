using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A remote and its units are moved to a second hub once they are paired, and the marks stay.</summary>
public sealed class MovedToASecondHubOncePaired : Fault
{
    public override string Goes => "a remote and its units are moved to a second hub once they are paired, and the marks stay";

    public override string Costs => "units that the new hub does not know";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Where(r => r.Moves.Count > 0 && !house.Remotes.Any(o => o != r && o.Moves.Intersect(r.Moves).Any())).One(dice) is not { } remote)
            return null;
        house.Hubs.Add("Second hub");
        house.Slips.Does(Stage.Paired, i =>
        {
            i.Book.Correct(remote.Name, RemoteFacts.Hub, "Second hub");
            foreach (var unit in remote.Moves)
                i.Book.Correct(unit.Key, UnitFacts.Hub, "Second hub");
        });
        return From(Stage.Paired, [.. remote.Moves.Select(u => u.Key)]).And(remote.Name, "Hub", "Second hub");
    }
}
