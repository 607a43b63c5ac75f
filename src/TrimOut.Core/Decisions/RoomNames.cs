using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>
/// Which room a name means. Two rooms may have one name when each has a floor, and not the same one: then they are Kitchen/Main and Kitchen/Upper.
/// </summary>
public static class RoomNames
{
    /// <summary>Stands between a room and its floor.</summary>
    public const char BeforeFloor = '/';

    // Before the room in the line of a new window.
    private const char InLine = '@';

    /// <summary>Why a room can't be called so; null when it can.</summary>
    /// <param name="house">The house.</param>
    /// <param name="name">The name.</param>
    /// <param name="floor">Its floor; null when none is known.</param>
    /// <param name="exceptRoom">The id of the room itself; null for a new one.</param>
    public static Refusal? Refuse(House house, string name, string? floor, string? exceptRoom = null)
    {
        foreach (var other in house.Rooms.Where(r => r.Id != exceptRoom && SameName.Comparer.Equals(r.Name, name)))
        {
            if (floor is not null && SameName.Comparer.Equals(other.Floor, floor))
                return new Refusal($"There is a room {other.Name} already on {other.Floor}. If they are one room, merge them: r on the job sheet, then M.");
            if (floor is null || other.Floor is null)
            {
                return new Refusal($"There is a room {other.Name} already. Two rooms of one name need a floor each: r on the job sheet shows the rooms, "
                    + "F there takes the floor.");
            }
        }
        return null;
    }

    /// <summary>Reads <c>Kitchen</c> or <c>Kitchen/Upper</c>: a room of the house, or one that is to be added.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="house">The house.</param>
    /// <param name="usualFloor">The floor of a new room when none is typed; null for none.</param>
    public static Result<RoomChoice> Read(string typed, House house, string? usualFloor = null)
    {
        var named = house.Rooms.Where(r => SameName.Comparer.Equals(r.Name, typed)).ToList();
        if (named.Count == 1)
            return RoomChoice.Of(named[0]);
        if (named.Count > 1)
        {
            return named.DistinctBy(r => r.FullName, SameName.Comparer).Count() == named.Count
                ? new Refusal($"There is more than one {named[0].Name}. Type which: {string.Join(", ", named.Select(r => r.FullName))}.")
                : new Refusal($"There are {named.Count} rooms {named[0].Name}. r on the job sheet shows them: M there merges them, F gives them floors.");
        }
        if (typed.LastIndexOf(BeforeFloor) is not (> 0 and var slash))
            return New(typed, usualFloor, house);
        var (name, floor) = (typed[..slash].Trim(), typed[(slash + 1)..].Trim());
        if (floor.Length == 0)
            return new Refusal($"Say after {BeforeFloor} on which floor {name} is.");
        return house.Rooms.FirstOrDefault(r => SameName.Comparer.Equals(r.Name, name) && SameName.Comparer.Equals(r.Floor, floor)) is { } there
            ? RoomChoice.Of(there)
            : New(name, house.Floors.FirstOrDefault(f => SameName.Comparer.Equals(f, floor)) ?? floor, house);
    }

    private static Result<RoomChoice> New(string name, string? floor, House house) =>
        name.Contains(InLine, StringComparison.Ordinal) || floor?.Contains(InLine, StringComparison.Ordinal) == true
        ? new Refusal("A new room has no @ in its name or floor. @ stands once in the line of a window, before its room; the next window has its own line.")
        : RoomFacts.Name.ReadTyped(name, house).Then(stored => floor is null
            ? Free(house, stored, null)
            : RoomFacts.Floor.ReadTyped(floor, house).Then(on => Free(house, stored, on)));

    private static Result<RoomChoice> Free(House house, string name, string? floor) =>
        Refuse(house, name, floor) is { } taken ? taken : new RoomChoice(null, name, floor);
}

/// <summary>A room of the house, or one that is to be added.</summary>
/// <param name="Id">Its id; null when it is to be added.</param>
/// <param name="Name">Its name.</param>
/// <param name="Floor">Its floor; null when none is known.</param>
public readonly record struct RoomChoice(string? Id, string Name, string? Floor)
{
    /// <summary>A room of the house.</summary>
    public static RoomChoice Of(Room room) => new(room.Id, room.Name, room.Floor);

    /// <summary>The room as it is typed: with its floor, where that is known.</summary>
    public override string ToString() => Floor is null ? Name : $"{Name}{RoomNames.BeforeFloor}{Floor}";
}
