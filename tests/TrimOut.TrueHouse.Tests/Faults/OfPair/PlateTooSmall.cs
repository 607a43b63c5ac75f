using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A remote that takes three gangs is planned in a plate of one.</summary>
public sealed class PlateTooSmall : Fault
{
    public override string Goes => "a remote that takes three gangs is planned in a plate of one";

    public override string Costs => "a wall opened again for a box";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.One(dice) is not { } remote)
            return null;
        remote.Sheet = new ControlSheet { Name = "Wide remote", Most = 40, Gangs = 3 };
        remote.Plate = "1-gang";
        house.RemoteSheets.Add(remote.Sheet);
        return At(remote.Name, (remote.Name, RemoteFacts.Plate), (remote.Sheet.Name, RemoteTypeFacts.Gangs));
    }
}
