using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Says which remote moves which unit.</summary>
public static class Controls
{
    /// <summary>Lets a remote move a unit, or no longer.</summary>
    public static Draft Toggle(Remote remote, Unit unit) => remote.Item.Get(RemoteFacts.Moves, unit.Id) == YesNo.Yes
        ? new Draft($"{remote.Name} no longer moves {unit.Tag}").PutStored(remote.Id, RemoteFacts.Moves.Field(unit.Id), null)
        : new Draft($"{remote.Name} moves {unit.Tag}").Put(remote.Id, RemoteFacts.Moves, YesNo.Yes, unit.Id);
}
