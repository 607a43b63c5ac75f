using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Merges rooms, names floors, and takes windows from one room to another: nothing that is in a room is left behind.</summary>
public static class ArrangeRooms
{
    /// <summary>Takes every window and remote of a room into another one, removed ones too, and the empty room out of the house.</summary>
    /// <param name="from">The room that there is once too often, such as a mistyped one.</param>
    /// <param name="into">The right one.</param>
    public static Result<Draft> Merge(Room from, Room into)
    {
        if (from.Id == into.Id)
            return new Refusal($"{from.FullName} is that room already. Say the room that it is merged into.");
        var house = from.House;
        var windows = house.Items.Values.Where(i => i.Kind == ItemKind.Window && i.Get(WindowFacts.Room)?.Id == from.Id).ToList();
        var remotes = house.Items.Values.Where(i => i.Kind == ItemKind.Remote && i.Get(RemoteFacts.Room)?.Id == from.Id).ToList();
        var unsettled = windows.Where(w => w.Heads(WindowFacts.Room.Name).Length > 1).Concat(remotes.Where(r => r.Heads(RemoteFacts.Room.Name).Length > 1));
        if (unsettled.FirstOrDefault() is { } first)
            return new Refusal($"Two laptops disagree about the room of {house.NameOf(first)}. Settle that on the punch list first.");
        var moved = string.Join(", ", windows.Concat(remotes).Where(i => !i.Removed).Select(house.NameOf));
        var draft = new Draft($"{from.FullName} merged into {into.FullName}: {(moved.Length == 0 ? "nothing was in it" : moved)}");
        draft = windows.Aggregate(draft, (d, w) => d.Put(w.Id, WindowFacts.Room, new ItemRef(into.Id)));
        draft = remotes.Aggregate(draft, (d, r) => d.Put(r.Id, RemoteFacts.Room, new ItemRef(into.Id)));
        if (into.Floor is null && from.Floor is { } floor && RoomNames.Refuse(house, into.Name, floor, into.Id) is null)
            draft = draft.Put(into.Id, RoomFacts.Floor, floor);
        var all = into.Windows.Concat(from.Windows).ToList();
        // While nobody put them in an order they are walked as they were added, as if the name had been right from the first.
        return (all.TrueForAll(w => w.PlaceInRoom is null) ? draft : draft.Walk(all)).PutStored(from.Id, Item.RemovedField, "yes");
    }

    /// <summary>A window in another room, behind those that are there.</summary>
    public static Result<Draft> Take(Window window, Room into) => window.RoomId == into.Id
        ? new Refusal($"{window.Tag} is in {into.FullName} already.")
        : new Draft($"{window.Tag} in {into.FullName}").Put(window.Id, WindowFacts.Room, new ItemRef(into.Id)).Walk(into.Windows.Append(window));

    /// <summary>Takes a room out of the house that nothing is in; one with windows or remotes is merged instead.</summary>
    public static Result<Draft> Remove(Room room) =>
        room.House.Items.Values.FirstOrDefault(i => !i.Removed && (i.Get(WindowFacts.Room) ?? i.Get(RemoteFacts.Room))?.Id == room.Id) is { } inIt
            ? new Refusal($"{room.House.NameOf(inIt)} is in {room.FullName}. M merges a room into another one, with all that is in it.")
            : RemoveItems.Remove(room.House, room.Item);

    /// <summary>Another name for a floor: of all its rooms. The name of another floor puts both together.</summary>
    /// <param name="house">The house.</param>
    /// <param name="floor">The floor; empty for the rooms without one.</param>
    /// <param name="typed">Its name from now on.</param>
    public static Result<Draft> NameFloor(House house, string floor, string typed) => RoomFacts.Floor.ReadTyped(typed, house).Then<Draft>(stored =>
    {
        var rooms = house.Rooms.Where(r => SameName.Comparer.Equals(r.Floor ?? "", floor)).ToList();
        foreach (var room in rooms)
        {
            var there = house.Rooms.Except(rooms)
                .FirstOrDefault(r => SameName.Comparer.Equals(r.Name, room.Name) && SameName.Comparer.Equals(r.Floor, stored));
            if (there is not null)
                return new Refusal($"{there.FullName} is on {stored} already. Rename or merge one of the two first.");
        }
        return rooms.GroupBy(r => r.Name, SameName.Comparer).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? new Refusal($"There are {twice.Count()} rooms {twice.Key} among them, and one floor has one of each name. Merge or rename them first.")
            : rooms.Aggregate(new Draft(floor.Length == 0 ? $"Floor {stored} of what had none" : $"Floor {floor} is called {stored}"),
                (d, r) => d.PutStored(r.Id, RoomFacts.Floor.Name, stored));
    });
}
