using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>A unit is paired with the remote of another room only.</summary>
public sealed class NoRemoteOfTheRoom : Fault
{
    public override string Goes => "a unit is paired with the remote of another room only";

    public override string Costs => "somebody stands at the window and fetches a remote";

    public override Stage In => Stage.Paired;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Remotes.Two(dice) is not var (own, other) || own.Moves.Count == 0)
            return null;
        var unit = own.Moves[0];
        own.Moves.Remove(unit);
        own.Presets["Evening"].Remove(unit);
        other.Moves.Add(unit);
        other.Presets["Evening"].Add(unit);
        foreach (var sheet in house.RemoteSheets)
            sheet.Most += 2;
        return At(unit.Key, (other.Name, RemoteFacts.Moves), (other.Name, RemoteFacts.Room)).And(own.Name, other.Name);
    }
}
