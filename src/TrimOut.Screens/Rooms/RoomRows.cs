using TrimOut.Core;
using TrimOut.Core.Houses;

namespace TrimOut.Screens.Rooms;

/// <summary>A row of the rooms: a floor, a room of it, or a window of that.</summary>
/// <param name="Id">Tells it from the others, also after the house changed.</param>
/// <param name="Floor">The floor that it is on; empty where none is known.</param>
/// <param name="Room">The room; null for a floor, and for a window that has no room yet.</param>
/// <param name="Window">The window; null for a floor or a room.</param>
/// <param name="Place">The room's place on the walk, from 1.</param>
internal sealed record RoomRow(string Id, string Floor, Room? Room, Window? Window, int Place)
{
    public bool IsFloor => Room is null && Window is null;
}

/// <summary>All floors, rooms and windows as one walks through them.</summary>
internal static class RoomRows
{
    private const string NoRoom = "no room";

    public static IReadOnlyList<RoomRow> Of(House house)
    {
        var rows = new List<RoomRow>();
        var floors = house.Floors.Any();
        string? floor = null;
        foreach (var (room, at) in house.Rooms.Select((r, at) => (r, at)))
        {
            var on = room.Floor ?? "";
            if (floors && !SameName.Comparer.Equals(on, floor))
                rows.Add(new RoomRow($"floor of {room.Id}", on, null, null, 0));
            floor = on;
            rows.Add(new RoomRow(room.Id, on, room, null, at + 1));
            rows.AddRange(room.Windows.Select(w => new RoomRow(w.Id, on, room, w, 0)));
        }
        var without = house.Windows.Where(w => w.Room is null).ToList();
        if (without.Count > 0)
            rows.Add(new RoomRow(NoRoom, NoRoom, null, null, 0));
        rows.AddRange(without.Select(w => new RoomRow(w.Id, NoRoom, null, w, 0)));
        return rows;
    }

    /// <summary>Whether a row heads the windows that have no room yet.</summary>
    public static bool HeadsRoomless(RoomRow row) => row.Id == NoRoom;
}
