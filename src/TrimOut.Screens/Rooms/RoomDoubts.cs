using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;

namespace TrimOut.Screens.Rooms;

/// <summary>Names of rooms and floors that are nearly one that is there: asked about before there are two.</summary>
internal static class RoomDoubts
{
    /// <summary>What may be a slip in a room that is to be added; null where nothing is.</summary>
    public static string? Of(RoomChoice room, House house) => room.Id is not null ? null : OfName(room.Name, house) ?? OfFloor(room.Floor ?? "", house);

    /// <summary>The same of the name of a room.</summary>
    public static string? OfName(string name, House house, string? except = null) =>
        NearNames.Of(name, house.Rooms.Where(r => r.Id != except).Select(r => r.Name)) is { } near
            ? $"{name.Trim()} would be a new room, and there is a room {near}." : null;

    /// <summary>The same of a floor.</summary>
    public static string? OfFloor(string floor, House house, string? except = null) =>
        NearNames.Of(floor, house.Floors.Where(f => f != except)) is { } near ? $"{floor.Trim()} would be a new floor, and there is a floor {near}." : null;
}
