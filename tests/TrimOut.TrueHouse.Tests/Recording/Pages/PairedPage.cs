using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Hubs, remotes, names, and which remote moves which unit.</summary>
internal static class PairedPage
{
    public static void Write(Installer installer)
    {
        var (house, book) = (installer.Truth, installer.Book);
        foreach (var hub in house.Hubs)
        {
            book.Add(ItemKind.Hub, hub);
            book.Put(hub, (HubFacts.Type, house.HubSheets[0].Name), (HubFacts.Location, "Hall cupboard"));
        }
        foreach (var remote in house.Remotes)
        {
            book.Add(ItemKind.Remote, remote.Name);
            book.Put(remote.Name, (RemoteFacts.Type, remote.Sheet.Name), (RemoteFacts.Room, remote.Room?.Name), (RemoteFacts.Hub, remote.Hub),
                (RemoteFacts.Plate, remote.Plate.Length > 0 ? remote.Plate : null));
            foreach (var unit in remote.Moves)
                book.PutFor(remote.Name, RemoteFacts.Moves, unit.Key, "yes");
        }
        foreach (var unit in house.Units)
            book.Put(unit.Key, (UnitFacts.Hub, unit.Hub), (UnitFacts.HubName, unit.HubName));
        installer.MarkUnits(Phase.Pair);
    }
}
