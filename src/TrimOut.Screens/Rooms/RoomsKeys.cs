using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Rooms;

/// <summary>Keys of the rooms.</summary>
internal static class RoomsKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<RoomsScreen>("enter", "Name or open", "Names the room, or the floor for all its rooms; opens a window.", Name) { Disabled = NoRow },
        new KeyAction<RoomsScreen>("n", "New room", "Adds a room at the end of the walk, with its floor after a slash.",
            (s, context) => Transition.Type(s, NewRoom(s, s.Current(context)?.Floor))),
        new KeyAction<RoomsScreen>("F", "Floor", "Says which floor the room is on.",
            (s, context) => Transition.Type(s, FloorOf(s, context, s.Current(context)!.Room!))) { Disabled = NoRoom },
        new KeyAction<RoomsScreen>("M", "Merge or move", "Takes all windows and remotes of a room into another one, or a window into another room.", Merge)
            { Disabled = NoRoomOrWindow },
        new KeyAction<RoomsScreen>("<", "Earlier", "The floor, room or window under the cursor comes one place earlier on the walk.",
            (s, context) => Transition.Save(s, Move(s.Current(context)!, context.House, -1))) { Disabled = NoRow },
        new KeyAction<RoomsScreen>(">", "Later", "The floor, room or window under the cursor comes one place later on the walk.",
            (s, context) => Transition.Save(s, Move(s.Current(context)!, context.House, 1))) { Disabled = NoRow },
        new KeyAction<RoomsScreen>("-", "Leave out", LeavingOut.Help, (s, context) => Transition.Type(s, LeavingOut.Ask(s, s.Current(context)!.Window!)))
            { Disabled = (s, context) => LeavingOut.NotBecause(s.Current(context)?.Window), OnBar = false },
        new KeyAction<RoomsScreen>("b", "Bring back", "Takes a window that was left out in again.",
            (s, context) => Transition.Save(s, LeaveOut.TakeIn(s.Current(context)!.Window!)))
            { Disabled = (s, context) => s.Current(context)?.Window is { LeftOut: true } ? null : "Move to a window that is left out first.", OnBar = false },
        new KeyAction<RoomsScreen>("X", "Remove", "Takes an empty room out of the house; it can be brought back by undo.", AskRemove)
            { Disabled = NoRoom, OnBar = false },
        Filtering.Key<RoomsScreen>("rooms and windows", "tag, kind, room or floor"),
        .. Moves.Through<RoomsScreen>("row", (s, context, by) => s.Moved(context, by)),
    ];

    private static string? NoRow(RoomsScreen s, ScreenContext context) => s.Current(context) is { } row
        ? RoomRows.HeadsRoomless(row) ? "That is no room. M on a window takes it into one." : null
        : "There is no room yet. n adds one.";

    private static string? NoRoom(RoomsScreen s, ScreenContext context) =>
        s.Current(context) is { Room: not null, Window: null } ? null : "Move to a room first.";

    private static string? NoRoomOrWindow(RoomsScreen s, ScreenContext context) =>
        s.Current(context) is { IsFloor: false } ? null : "Move to a room or a window first.";

    private static Result<Draft> Move(RoomRow row, House house, int by) => row.Window is { } window ? WalkingOrder.Move(window, by)
        : row.Room is { } room ? WalkingOrder.Move(room, by)
        : WalkingOrder.MoveFloor(house, row.Floor, by);

    private static Transition Name(RoomsScreen s, ScreenContext context) => s.Current(context)! switch
    {
        { Window: { } window } => Transition.Open(s, SheetScreen.At(SheetOf.Holding(context.House, window.Item), context.House)),
        { Room: { } room } => Transition.Type(s, NameOf(s, context, room)),
        var row => Transition.Type(s, NameOfFloor(s, context, row.Floor)),
    };

    private static Entry NameOfFloor(RoomsScreen s, ScreenContext context, string floor) =>
        new(floor.Length == 0 ? "Name of the FLOOR" : $"Name of the FLOOR {floor}", floor,
            "such as Main or Upper; the name of another floor puts both together", (text, now) => text.Trim() == floor
            ? Transition.Say(s, "Not changed.")
            : ArrangeRooms.NameFloor(now.House, floor, text).Then<Transition>(d => Transition.Save(s, d)))
        {
            Options = Floors(context.House),
            Doubt = (text, now) => RoomDoubts.OfFloorName(text, now.House, floor),
        };

    /// <summary>Tab goes on to the floor.</summary>
    private static Entry NameOf(RoomsScreen s, ScreenContext context, Room room) => FactEntry.For(s, context.House, room.Item, RoomFacts.Name) with
    {
        Doubt = (text, now) => RoomDoubts.OfName(text, now.House, room.Id),
        AcceptAndNext = (text, now) => FactEntry.Draft(now, room.Item, RoomFacts.Name, text, null).Then<Transition>(draft => draft is null
            ? AskFloor(s, now, room.Id)
            : new Transition(s, new Ask.Save(draft, (screen, after) => AskFloor((RoomsScreen)screen, after, room.Id)))),
    };

    private static Transition AskFloor(RoomsScreen s, ScreenContext context, string room) =>
        Transition.Type(s, FloorOf(s, context, context.House.FindRoom(room)!));

    private static Entry FloorOf(RoomsScreen s, ScreenContext context, Room room) =>
        FactEntry.For(s, context.House, room.Item, RoomFacts.Floor) with
        {
            Options = Floors(context.House),
            Doubt = (text, now) => RoomDoubts.OfFloor(text, now.House),
        };

    private static IReadOnlyList<Option> Floors(House house) => [.. house.Floors.Select(f => new Option(f, f))];

    private static Entry NewRoom(RoomsScreen s, string? floor) => new("New room", "", "its name, and its floor after a slash: Kitchen/Upper", (text, now) =>
        Read(text, now.House, floor).Then(room => AddItems.Room(now.House, room)).Then<Transition>(draft =>
            new Transition(s, new Ask.Save(draft, (_, after) => new Transition(RoomsScreen.On(after.House.Rooms.MaxBy(r => r.Item.Place)!.Id, after))))))
    {
        Echo = (text, now) => text.Trim().Length == 0 ? "" : Read(text, now.House, floor).Then<string>(r => r.ToString()),
        Doubt = (text, now) => Read(text, now.House, floor) is { Ok: true } room ? RoomDoubts.Of(room.Value, now.House) : null,
    };

    private static Result<RoomChoice> Read(string text, House house, string? floor) =>
        RoomNames.Read(text.Trim(), house, floor is { Length: > 0 } && house.Floors.Contains(floor) ? floor : null).Then<RoomChoice>(room =>
            room.Id is null ? room : new Refusal($"There is a room {room} already. Another one of that name needs another floor: {room.Name}/Upper."));

    private static Transition Merge(RoomsScreen s, ScreenContext context)
    {
        var row = s.Current(context)!;
        var others = context.House.Rooms.Where(r => r.Id != row.Room?.Id).Select(r => new Option(r.Id, r.FullName)).ToList();
        if (others.Count == 0)
            return Transition.Say(s, "There is no other room. n adds one.");
        var what = $"{row.Window?.Tag ?? row.Room!.FullName} into the room";
        var entry = new Entry(what, "", "the right one; Up and Down walk through them",
            (text, now) => Other(text, now.House, others).Then(into => Into(s, row, now.House, into)));
        return Transition.Type(s, entry with { Options = others });
    }

    private static Result<Transition> Into(RoomsScreen s, RoomRow row, House house, Room into) => row.Window is { } window
        ? ArrangeRooms.Take(house.FindWindow(window.Id)!, into).Then<Transition>(d => Transition.Save(s, d))
        : ArrangeRooms.Merge(house.FindRoom(row.Room!.Id)!, into).Then<Transition>(d => AskMerge(s, d, into));

    private static Transition AskMerge(RoomsScreen s, Draft draft, Room into) => new(s, new Ask.Confirm(
        $"{draft.What}. M merges them (undo brings all back), any other key leaves both.", "M",
        new Transition(s, new Ask.Save(draft, (_, after) => new Transition(RoomsScreen.On(into.Id, after))))));

    private static Result<Room> Other(string text, House house, IReadOnlyList<Option> others)
    {
        var fit = others.Where(o => string.Equals(o.Shown, text.Trim(), StringComparison.OrdinalIgnoreCase)).ToList();
        if (fit.Count == 0 && text.Trim().Length > 0)
            fit = [.. others.Where(o => o.Shown.StartsWith(text.Trim(), StringComparison.OrdinalIgnoreCase))];
        return fit.Count == 1 ? house.FindRoom(fit[0].Stored)!
            : fit.Count > 1 ? new Refusal($"More than one: {string.Join(", ", fit.Select(o => o.Shown))}. Type more of the name.")
            : new Refusal($"There is no other room \"{text.Trim()}\". There are: {string.Join(", ", others.Select(o => o.Shown).Take(8))}.");
    }

    private static Transition AskRemove(RoomsScreen s, ScreenContext context)
    {
        var room = s.Current(context)!.Room!;
        var draft = ArrangeRooms.Remove(room);
        return draft.Ok
            ? new Transition(s, new Ask.Confirm($"Remove {room.FullName}? X removes it (undo brings it back), any other key keeps it.", "X",
                Transition.Save(s, draft)))
            : Transition.Say(s, draft.Reason!);
    }
}
