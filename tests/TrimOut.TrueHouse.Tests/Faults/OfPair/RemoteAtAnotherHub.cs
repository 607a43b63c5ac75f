using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A remote counts at one hub and its units at another.</summary>
public sealed class RemoteAtAnotherHub : Fault
{
    public override string Goes => "a remote counts at one hub and its units at another";

    public override string Costs => "a remote that moves nothing";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Where(r => r.Moves.Count > 0).One(dice) is not { } remote)
            return null;
        house.Hubs.Add("Second hub");
        remote.Hub = "Second hub";
        return At(remote.Name, (remote.Name, RemoteFacts.Hub), (remote.Name, RemoteFacts.Moves), (remote.Moves[0].Key, UnitFacts.Hub))
            .And([.. remote.Moves.Select(u => u.Key)]).And("Second hub");
    }
}
