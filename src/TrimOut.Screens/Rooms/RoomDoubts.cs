using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Rooms;

/// <summary>Names of rooms and floors that are nearly one that is there: asked about before there are two.</summary>
internal static class RoomDoubts
{
    /// <summary>What may be a slip in a room that is to be added; null where nothing is.</summary>
    public static string? Of(RoomChoice room, House house) => room.Id is not null ? null : OfName(room.Name, house) ?? OfFloor(room.Floor ?? "", house);

    /// <summary>The same of the name of a room.</summary>
    public static string? OfName(string name, House house, string? except = null) => NameDoubt.Of(name, "a room")
        ?? (NearNames.Of(name, house.Rooms.Where(r => r.Id != except).Select(r => r.Name)) is { } near
            ? $"{name.Trim()} would be a new room, and there is a room {near}." : null);

    /// <summary>What may be a slip in the name that a floor is given on the list of rooms: that of a room was meant for the row below.</summary>
    public static string? OfFloorName(string name, House house, string floor) =>
        house.Rooms.FirstOrDefault(r => SameName.Comparer.Equals(r.Name, name.Trim())) is { } room
            ? $"{room.Name} is a room, and this names the floor for all rooms on it." : OfFloor(name, house, floor);

    /// <summary>The same of a floor.</summary>
    public static string? OfFloor(string floor, House house, string? except = null) =>
        NearNames.Of(floor, house.Floors.Where(f => f != except)) is { } near ? $"{floor.Trim()} would be a new floor, and there is a floor {near}." : null;
}
