using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;

namespace TrimOut.Core.Decisions;

/// <summary>Adds rooms, windows, units and everything else.</summary>
public static class AddItems
{
    /// <summary>The tag that the next window is offered.</summary>
    public static string NextTag(House house) => Tags.Next(house);

    /// <summary>The label that the next box of cable is offered: B after A, 4 after 3, A for the first.</summary>
    public static string NextBox(House house)
    {
        var last = house.Boxes.IsEmpty ? "" : house.Boxes[^1].Name;
        var next = last is [.., >= 'A' and < 'Z' and var letter] && last.Length == 1 ? ((char)(letter + 1)).ToString()
            : last is [.., >= '0' and <= '9'] ? Tags.After(last) : "A";
        return house.Boxes.Any(b => SameName.Comparer.Equals(b.Name, next)) ? "" : next;
    }

    /// <summary>A room, at the end of the walk.</summary>
    public static Result<Draft> Room(House house, string name, string? floor) => RoomFacts.Name.ReadTyped(name, house).Then<Draft>(stored =>
    {
        if (string.IsNullOrWhiteSpace(floor))
            return Room(house, new RoomChoice(null, stored, null));
        return RoomFacts.Floor.ReadTyped(floor, house).Then(on => Room(house, new RoomChoice(null, stored, on)));
    });

    /// <summary>A room that was read, at the end of the walk.</summary>
    public static Result<Draft> Room(House house, RoomChoice room) => RoomNames.Refuse(house, room.Name, room.Floor) is { } taken
        ? taken
        : new Draft($"New room {room.Name}").WithRoom(house, room, out _);

    /// <summary>Adds a room to a draft, at the end of the walk.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="house">The house.</param>
    /// <param name="room">The room, known to be free.</param>
    /// <param name="id">The stand-in for its id.</param>
    internal static Draft WithRoom(this Draft draft, House house, RoomChoice room, out string id) => draft.New(ItemKind.Room, House.RootId, out id)
        .Put(id, RoomFacts.Name, room.Name)
        .Put(id, RoomFacts.WalkingOrder, house.Rooms.Select(r => r.WalkingOrder ?? 0).DefaultIfEmpty().Max() + 1)
        .PutIf(id, RoomFacts.Floor, room.Floor);

    /// <summary>A window with one unit and its home run.</summary>
    /// <param name="house">The house.</param>
    /// <param name="tag">Its tag.</param>
    /// <param name="room">Its room's id; null when not known yet.</param>
    public static Result<Draft> Window(House house, string tag, string? room) => WindowFacts.Tag.ReadTyped(tag, house).Then<Draft>(stored =>
    {
        if (Tags.Refuse(house, stored) is { } taken)
            return taken;
        return new Draft($"New window {stored}").WithWindow(stored, room, out _, out _);
    });

    /// <summary>Adds a window with one unit and its home run to a draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="tag">Its tag in the stored form, known to be free.</param>
    /// <param name="room">Its room's id, which may be one of this draft; null when not known yet.</param>
    /// <param name="window">The stand-in for the window's id.</param>
    /// <param name="unit">The stand-in for the unit's id.</param>
    public static Draft WithWindow(this Draft draft, string tag, string? room, out string window, out string unit)
    {
        draft = draft.New(ItemKind.Window, House.RootId, out window)
            .PutStored(window, WindowFacts.Tag.Name, tag)
            .Put(window, WindowFacts.Covered, YesNo.Yes);
        if (room is not null)
            draft = draft.Put(window, WindowFacts.Room, new ItemRef(room));
        return WithUnit(draft, window, 1, out unit);
    }

    /// <summary>One more unit in a window, with its home run.</summary>
    public static Result<Draft> Unit(House house, string windowId) => house.FindWindow(windowId) is not { } window
        ? new Refusal("That window is not in the house.")
        : window.Units.Length >= 9 ? new Refusal($"{window.Tag} has nine units already.")
        : window.Units.LastOrDefault() is not { } last
        ? WithUnit(new Draft($"One more unit in {window.Tag}"), window.Id, 1, out _)
        : LikeIt(new Draft($"One more unit in {window.Tag}"), last, window.Units.Max(u => u.Position ?? 0) + 1);

    /// <summary>What units of one opening share, as far as it is decided: another value is typed over it.</summary>
    private static readonly Fact[] Shared =
    [
        UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Power, UnitFacts.Socket, UnitFacts.Group, UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity,
        UnitFacts.HeadCover,
    ];

    /// <summary>One more unit with all that it shares with the one beside it, and that one's cable; what was taken over is said.</summary>
    private static Draft LikeIt(Draft draft, Unit beside, int position)
    {
        draft = WithUnit(draft, beside.Window.Id, position, out var unit, out var run);
        var taken = new List<Fact>();
        foreach (var (to, from, fact) in Shared.Select(f => (unit, beside.Item, f)).Append((run, beside.Run?.Item ?? beside.Item, RunFacts.Cable)))
        {
            if (from.Kind != fact.Subject || from.Latest(fact.Name)?.Stored is not { } stored)
                continue;
            draft = draft.PutStored(to, fact.Name, stored);
            taken.Add(fact);
        }
        return taken.Count == 0 ? draft
            : draft with { What = $"{draft.What}; as {beside.Tag}: {string.Join(", ", taken.Select(f => f.Label.ToLowerInvariant()))}" };
    }

    /// <summary>One more leg of a home run.</summary>
    public static Draft Leg(HomeRun run) => new Draft($"One more leg of {run.Name}").New(ItemKind.Leg, run.Id, out _);

    /// <summary>A panel, hub, remote or part of the kit, with a name.</summary>
    /// <param name="house">The house.</param>
    /// <param name="kind">What it is; one that has a name of its own.</param>
    /// <param name="name">Its name, unique among its kind.</param>
    public static Result<Draft> Named(House house, ItemKind kind, string name)
    {
        if (FactTable.Find(kind, "name") is not { } fact)
            return new Refusal("That can't be added by a name.");
        return fact.ReadTyped(name, house).Then<Draft>(stored =>
        {
            var what = KebabCase.Of(kind).Replace('-', ' ');
            if (OwnNames.Refuse(house, kind, stored) is { } taken)
                return taken;
            var draft = new Draft($"New {what} {stored}").New(kind, House.RootId, out var id).PutStored(id, fact.Name, stored).AskingOf(id, kind);
            return TypeOf(kind) is var (type, of) && house.ItemsOf(of).FirstOrDefault() is { } first ? draft.Put(id, type, new ItemRef(first.Id)) : draft;
        });
    }

    /// <summary>A visit; two on different days may be called alike.</summary>
    public static Result<Draft> Visit(House house, string what) => VisitFacts.What.ReadTyped(what, house).Then<Draft>(stored =>
        new Draft($"New visit {stored}").New(ItemKind.Visit, House.RootId, out var id)
            .PutStored(id, VisitFacts.What.Name, stored)
            .Put(id, VisitFacts.State, VisitState.Planned));

    /// <summary>A preset on a remote.</summary>
    public static Result<Draft> Preset(Remote remote, string name) => PresetFacts.Name.ReadTyped(name, remote.House).Then<Draft>(stored =>
        remote.Presets.Any(p => SameName.Comparer.Equals(p.Name, stored)) ? new Refusal($"{remote.Name} has a preset {stored} already.")
        : new Draft($"New preset {stored} on {remote.Name}").New(ItemKind.Preset, remote.Id, out var id).PutStored(id, PresetFacts.Name.Name, stored));

    /// <summary>Adds a unit with its home run to a draft.</summary>
    internal static Draft WithUnit(this Draft draft, string window, int position, out string unit) => WithUnit(draft, window, position, out unit, out _);

    private static Draft WithUnit(Draft draft, string window, int position, out string unit, out string run) => draft
        .New(ItemKind.Unit, window, out unit)
        .Put(unit, UnitFacts.Position, position)
        .New(ItemKind.Run, unit, out run);

    private static (Fact<ItemRef> Fact, ItemKind Of)? TypeOf(ItemKind kind) => kind switch
    {
        ItemKind.Panel => (PanelFacts.Type, ItemKind.PanelType),
        ItemKind.Box => (BoxFacts.Cable, ItemKind.CableType),
        ItemKind.Hub => (HubFacts.Type, ItemKind.HubType),
        ItemKind.Remote => (RemoteFacts.Type, ItemKind.RemoteType),
        _ => null,
    };
}
