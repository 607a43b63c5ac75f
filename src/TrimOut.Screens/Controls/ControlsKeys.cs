using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Controls;

/// <summary>Keys of the controls.</summary>
internal static class ControlsKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<ControlsScreen>("space", "Moves", "The remote moves this unit, or no longer; then the next unit.", (s, sight) =>
            new Turn(s, new Ask.Save(Core.Decisions.Controls.Turn(s.Remote(sight)!, s.Unit(sight)!), (screen, after) => new Turn(Moved((ControlsScreen)screen, after, 1)))))
            { Disabled = (s, sight) => s.Remote(sight) is null ? "There is no remote yet. n adds one." : s.Unit(sight) is null ? "There is no unit yet." : null },
        new KeyAction<ControlsScreen>("r", "Whole room", "The remote moves every unit of its room.", (s, sight) => WholeRoom(s, sight)) { Disabled = NoRemote },
        new KeyAction<ControlsScreen>("n", "New remote", "Adds a remote.", (s, sight) => Turn.Type(s, Named(s, ItemKind.Remote, "Name of the remote", sight.House.Rooms.FirstOrDefault(r => sight.House.Remotes.All(x => x.Room?.Id != r.Id))?.Name ?? ""))),
        new KeyAction<ControlsScreen>("h", "New hub", "Adds a hub.", (s, sight) => Turn.Type(s, Named(s, ItemKind.Hub, "Name of the hub", sight.House.Hubs.IsEmpty ? "Hub" : ""))),
        new KeyAction<ControlsScreen>("p", "Preset", "Stores a position of this unit in a preset of this remote.", (s, sight) => Turn.Type(s, PresetName(s, sight)))
            { Disabled = (s, sight) => NoRemote(s, sight) ?? (s.Unit(sight) is null ? "There is no unit yet." : null) },
        new KeyAction<ControlsScreen>("enter", "Remote", "All facts of the remote: type, room, hub, wall plate.", (s, sight) => Turn.Open(s, SheetScreen.At(new OfItem(s.Remote(sight)!.Id), sight.House))) { Disabled = NoRemote },
        new KeyAction<ControlsScreen>("e", "Hub's facts", "All facts of the first hub.", (s, sight) => Turn.Open(s, SheetScreen.At(new OfItem(sight.House.Hubs[0].Id), sight.House)))
            { Disabled = (s, sight) => sight.House.Hubs.IsEmpty ? "There is no hub yet. h adds one." : null, OnBar = false },
        new KeyAction<ControlsScreen>("right", "Next remote", "The next remote.", (s, sight) => new Turn(s with { Column = Paging.Move(s.Column, 1, sight.House.Remotes.Length) })) { OnBar = false },
        new KeyAction<ControlsScreen>("left", "Remote before", "The remote before.", (s, sight) => new Turn(s with { Column = Paging.Move(s.Column, -1, sight.House.Remotes.Length) })) { OnBar = false },
        .. Moves.Through<ControlsScreen>("unit", Moved),
    ];

    private static string? NoRemote(ControlsScreen s, Sight sight) => s.Remote(sight) is null ? "There is no remote yet. n adds one." : null;

    private static ControlsScreen Moved(ControlsScreen s, Sight sight, int by) => s with { Row = Paging.Move(s.Row, by, sight.House.Units.Length) };

    private static Entry Named(ControlsScreen s, ItemKind kind, string label, string offered) => new(label, offered, "short, as the owner will call it",
        (text, sight) => AddItems.Named(sight.House, kind, text).Then<Turn>(draft =>
        {
            var id = draft.Edits.OfType<Core.History.Edit.Add>().Single().Item;
            if (kind == ItemKind.Remote && sight.House.Rooms.FirstOrDefault(r => string.Equals(r.Name, text.Trim(), StringComparison.OrdinalIgnoreCase)) is { } room)
                draft = draft.Put(id, RemoteFacts.Room, new ItemRef(room.Id));
            if (kind == ItemKind.Remote && sight.House.Hubs.FirstOrDefault() is { } hub)
                draft = draft.Put(id, RemoteFacts.Hub, new ItemRef(hub.Id));
            return new Turn(s, new Ask.Save(draft, (screen, after) => new Turn(kind == ItemKind.Remote ? ((ControlsScreen)screen) with { Column = after.House.Remotes.Length - 1 } : screen)));
        }));

    private static Turn WholeRoom(ControlsScreen s, Sight sight)
    {
        var remote = s.Remote(sight)!;
        if (remote.Room is not { } room)
            return Turn.Say(s, $"{remote.Name} has no room yet. Enter opens its facts.");
        var units = sight.House.Units.Where(u => u.Window.Room?.Id == room.Id && u.Remotes.All(r => r.Id != remote.Id)).ToList();
        return units.Count == 0
            ? Turn.Say(s, $"{remote.Name} moves every unit of {room.Name} already.")
            : Turn.Save(s, units.Select(u => Core.Decisions.Controls.Turn(remote, u)).Aggregate((a, b) => a.And(b)) with { What = $"{remote.Name} moves every unit of {room.Name}" });
    }

    private static Entry PresetName(ControlsScreen s, Sight sight)
    {
        var remote = s.Remote(sight)!;
        return new Entry("Preset", remote.Presets.FirstOrDefault()?.Name ?? "", "its name, such as Evening", (text, now) =>
        {
            var of = s.Remote(now)!;
            var preset = of.Presets.FirstOrDefault(p => string.Equals(p.Name, text.Trim(), StringComparison.OrdinalIgnoreCase));
            return preset is not null
                ? Turn.Type(s, Position(s, now, preset.Item))
                : AddItems.Preset(of, text).Then<Turn>(draft => new Turn(s, new Ask.Save(draft, (screen, after) =>
                    Turn.Type(screen, Position((ControlsScreen)screen, after, s.Remote(after)!.Presets.Last().Item)))));
        })
        {
            Options = [.. remote.Presets.Select(p => new Option(p.Id, p.Name))],
        };
    }

    private static Entry Position(ControlsScreen s, Sight sight, Item preset) =>
        FactEntry.For(s, sight.House, preset, PresetFacts.Position, s.Unit(sight)!.Id, (screen, after) => new Turn(Moved((ControlsScreen)screen, after, 1)));
}
