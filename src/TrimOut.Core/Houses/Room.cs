using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>A room.</summary>
public sealed class Room(House house, Item item) : Subject(house, item)
{
    /// <summary>Its floor.</summary>
    public string? Floor => Item.Get(RoomFacts.Floor);

    /// <summary>Its place on the walk.</summary>
    public int? WalkingOrder => Item.Get(RoomFacts.WalkingOrder);

    /// <summary>Its name, and where another room has the same name its floor: Kitchen/Upper.</summary>
    public string FullName => Floor is { } floor && House.Rooms.Any(r => r.Id != Id && SameName.Comparer.Equals(r.Name, Name)) ? $"{Name}/{floor}" : Name;

    /// <summary>Its windows.</summary>
    public IEnumerable<Window> Windows => House.Look(Lookups.WindowsByRoom, Id).Select(w => House.FindWindow(w)!);
}
