using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A remote is to move one unit more than it takes.</summary>
public sealed class RemoteTooFull : Fault
{
    public override string Goes => "a remote is to move one unit more than it takes";

    public override string Costs => "the first unit is pushed out when the last is paired";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Where(r => r.Moves.Count > 1).One(dice) is not { } remote)
            return null;
        remote.Sheet = new ControlSheet { Name = "Small remote", Most = remote.Moves.Count - 1 };
        house.RemoteSheets.Add(remote.Sheet);
        return At(remote.Name, (remote.Name, RemoteFacts.Moves), (remote.Sheet.Name, RemoteTypeFacts.Units));
    }
}
