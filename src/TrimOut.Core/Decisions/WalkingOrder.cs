using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Changes the order of floors, rooms and windows in which one walks, which every list and paper keeps.</summary>
public static class WalkingOrder
{
    /// <summary>A room one place earlier or later on the walk, also past rooms of another floor.</summary>
    /// <param name="room">The room.</param>
    /// <param name="by">1 for later, -1 for earlier.</param>
    public static Result<Draft> Move(Room room, int by)
    {
        var rooms = room.House.Rooms;
        var (at, to) = (rooms.IndexOf(room), rooms.IndexOf(room) + by);
        return to < 0 || to >= rooms.Length
            ? new Refusal($"{room.FullName} is the {(by < 0 ? "first" : "last")} room on the walk.")
            : new Draft($"{room.FullName} {(by < 0 ? "before" : "after")} {rooms[to].FullName} on the walk")
                .Walk(rooms.SetItem(at, rooms[to]).SetItem(to, room));
    }

    /// <summary>A window one place earlier or later among those of its room.</summary>
    /// <param name="window">The window.</param>
    /// <param name="by">1 for later, -1 for earlier.</param>
    public static Result<Draft> Move(Window window, int by)
    {
        var windows = Beside(window);
        var (at, to) = (windows.FindIndex(w => w.Id == window.Id), windows.FindIndex(w => w.Id == window.Id) + by);
        if (to < 0 || to >= windows.Count)
        {
            return new Refusal($"{window.Tag} is the {(by < 0 ? "first" : "last")} window of {window.Room?.FullName ?? "those without a room"}. "
                + "M takes it to another room.");
        }
        var what = $"{window.Tag} {(by < 0 ? "before" : "after")} {windows[to].Tag} on the walk";
        (windows[at], windows[to]) = (windows[to], windows[at]);
        return new Draft(what).Walk(windows);
    }

    /// <summary>
    /// All rooms of a floor before those of the floor before it, or behind those of the floor behind it; the rooms of each floor are then together.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="floor">The floor; empty for the rooms without one.</param>
    /// <param name="by">1 for later, -1 for earlier.</param>
    public static Result<Draft> MoveFloor(House house, string floor, int by)
    {
        var floors = house.Rooms.GroupBy(r => r.Floor ?? "", SameName.Comparer).ToList();
        var (at, to) = (floors.FindIndex(f => SameName.Comparer.Equals(f.Key, floor)), floors.FindIndex(f => SameName.Comparer.Equals(f.Key, floor)) + by);
        if (at < 0)
            return new Refusal($"No room is on {floor}.");
        if (to < 0 || to >= floors.Count)
            return new Refusal($"{Named(floors[at].Key)} is the {(by < 0 ? "first" : "last")} floor on the walk.");
        var what = $"{Named(floors[at].Key)} {(by < 0 ? "before" : "after")} {Named(floors[to].Key)} on the walk";
        (floors[at], floors[to]) = (floors[to], floors[at]);
        return new Draft(what).Walk(floors.SelectMany(f => f));
    }

    /// <summary>Puts the places of rooms that stand at other places.</summary>
    internal static Draft Walk(this Draft draft, IEnumerable<Room> rooms) => rooms.Select((room, at) => (room, Place: at + 1))
        .Where(r => r.room.WalkingOrder != r.Place)
        .Aggregate(draft, (d, r) => d.Put(r.room.Id, RoomFacts.WalkingOrder, r.Place));

    /// <summary>Puts the places of windows of one room that stand at other places.</summary>
    internal static Draft Walk(this Draft draft, IEnumerable<Window> windows) => windows.Select((window, at) => (window, Place: at + 1))
        .Where(w => w.window.PlaceInRoom != w.Place)
        .Aggregate(draft, (d, w) => d.Put(w.window.Id, WindowFacts.PlaceInRoom, w.Place));

    private static List<Window> Beside(Window window) =>
        [.. window.Room is { } room ? room.Windows : window.House.Windows.Where(w => w.Room is null)];

    private static string Named(string floor) => floor.Length == 0 ? "What has no floor yet" : floor;
}
