using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Controls;

/// <summary>Keys of the controls.</summary>
internal static class ControlsKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<ControlsScreen>("space", "Moves", "The remote moves this unit, or no longer; then the next unit.", (s, context) =>
            new Transition(s, new Ask.Save(Core.Decisions.Controls.Toggle(s.Remote(context)!, s.Unit(context)!),
                (screen, after) => new Transition(Moved((ControlsScreen)screen, after, 1))))) { Disabled = NoRemoteOrUnit },
        new KeyAction<ControlsScreen>("R", "Whole room", "The remote moves every unit of its room.", (s, context) => WholeRoom(s, context))
            { Disabled = NoRemote },
        new KeyAction<ControlsScreen>("n", "New remote", "Adds a remote.",
            (s, context) => Transition.Type(s, Named(s, ItemKind.Remote, "Name of the remote", RoomWithoutRemote(context.House)?.Name ?? ""))),
        new KeyAction<ControlsScreen>("N", "New hub", "Adds a hub.",
            (s, context) => Transition.Type(s, Named(s, ItemKind.Hub, "Name of the hub", context.House.Hubs.IsEmpty ? "Hub" : ""))),
        new KeyAction<ControlsScreen>("%", "Preset", "Stores a position of this unit in a preset of this remote; then the next unit.",
            (s, context) => Transition.Type(s, PresetName(s, context)))
            { Disabled = NoRemoteOrUnit },
        new KeyAction<ControlsScreen>("enter", "Remote", "All details of the remote: type, room, hub, wall plate.",
            (s, context) => Transition.Open(s, SheetScreen.At(new OfItem(s.Remote(context)!.Id), context.House))) { Disabled = NoRemote },
        new KeyAction<ControlsScreen>("d", "All details", "All details of the first hub.",
            (s, context) => Transition.Open(s, SheetScreen.At(new OfItem(context.House.Hubs[0].Id), context.House)))
            { Disabled = (s, context) => context.House.Hubs.IsEmpty ? "There is no hub yet. N adds one." : null, OnBar = false },
        new KeyAction<ControlsScreen>("f", "Findings", "Goes to the field that fixes the worst finding that is told here.", (s, context) =>
            s.Worst(context) is { } finding
                ? Transition.Open(s, MendedAt.Of(context, finding.Found.Mends))
                : Transition.Say(s, s.Unit(context) is { } unit ? UnitCard.NothingFound(context, unit) : "Nothing wrong is known here.")) { OnBar = false },
        new KeyAction<ControlsScreen>("right", "Next remote", "The next remote.",
            (s, context) => new Transition(s with { Column = Paging.Move(s.Column, 1, context.House.Remotes.Length) })) { OnBar = false },
        new KeyAction<ControlsScreen>("left", "Remote before", "The remote before.",
            (s, context) => new Transition(s with { Column = Paging.Move(s.Column, -1, context.House.Remotes.Length) })) { OnBar = false },
        Filtering.Key<ControlsScreen>("units", "tag, room, kind or remote"),
        .. Moves.Through<ControlsScreen>("unit", Moved),
    ];

    private static string? NoRemote(ControlsScreen s, ScreenContext context) => s.Remote(context) is null ? "There is no remote yet. n adds one." : null;

    private static string? NoRemoteOrUnit(ControlsScreen s, ScreenContext context) =>
        NoRemote(s, context) ?? (s.Unit(context) is null ? "There is no unit yet." : null);

    private static Room? RoomWithoutRemote(House house) => house.Rooms.FirstOrDefault(r => house.Remotes.All(x => x.Room?.Id != r.Id));

    private static ControlsScreen Moved(ControlsScreen s, ScreenContext context, int by) => s with { Row = Paging.Move(s.Row, by, s.Units(context).Count) };

    private static Entry Named(ControlsScreen s, ItemKind kind, string label, string offered) => new(label, offered, "short, as the owner will call it",
        (text, context) => AddItems.Named(context.House, kind, text).Then<Transition>(draft =>
        {
            var id = draft.Edits.OfType<Core.History.Edit.Add>().Single().Item;
            if (kind == ItemKind.Remote
                && context.House.Rooms.FirstOrDefault(r => string.Equals(r.Name, text.Trim(), StringComparison.OrdinalIgnoreCase)) is { } room)
                draft = draft.Put(id, RemoteFacts.Room, new ItemRef(room.Id));
            if (kind == ItemKind.Remote && context.House.Hubs.FirstOrDefault() is { } hub)
                draft = draft.Put(id, RemoteFacts.Hub, new ItemRef(hub.Id));
            return new Transition(s, new Ask.Save(draft, (screen, after) =>
                new Transition(kind == ItemKind.Remote ? (ControlsScreen)screen with { Column = after.House.Remotes.Length - 1 } : screen)));
        }));

    private static Transition WholeRoom(ControlsScreen s, ScreenContext context)
    {
        var remote = s.Remote(context)!;
        if (remote.Room is not { } room)
            return Transition.Say(s, $"{remote.Name} has no room yet. Enter opens its details.");
        var units = context.House.Units.Where(u => u.Window.Room?.Id == room.Id && u.Remotes.All(r => r.Id != remote.Id)).ToList();
        if (units.Count == 0)
            return Transition.Say(s, $"{remote.Name} moves every unit of {room.Name} already.");
        var all = units.Select(u => Core.Decisions.Controls.Toggle(remote, u)).Aggregate((a, b) => a.And(b));
        return Transition.Save(s, all with { What = $"{remote.Name} moves every unit of {room.Name}" });
    }

    private static Entry PresetName(ControlsScreen s, ScreenContext context)
    {
        var remote = s.Remote(context)!;
        return new Entry("Preset", remote.Presets.FirstOrDefault()?.Name ?? "", "its name, such as Evening", (text, now) =>
        {
            var of = s.Remote(now)!;
            var preset = of.Presets.FirstOrDefault(p => string.Equals(p.Name, text.Trim(), StringComparison.OrdinalIgnoreCase));
            return preset is not null
                ? Transition.Type(s, Position(s, now, preset.Item))
                : AddItems.Preset(of, text).Then<Transition>(draft => new Transition(s, new Ask.Save(draft, (screen, after) =>
                    Transition.Type(screen, Position((ControlsScreen)screen, after, s.Remote(after)!.Presets.Last().Item)))));
        })
        {
            Options = [.. remote.Presets.Select(p => new Option(p.Id, p.Name))],
        };
    }

    private static Entry Position(ControlsScreen s, ScreenContext context, Item preset)
    {
        var unit = s.Unit(context)!;
        var entry = FactEntry.For(s, context.House, preset, PresetFacts.Position, unit.Id,
            (screen, after) => new Transition(Moved((ControlsScreen)screen, after, 1)));
        if (preset.Latest(PresetFacts.Position.Field(unit.Id))?.Stored is not null)
            return entry;
        var before = Before(s, context, preset);
        return entry with
        {
            Options = before is { } like ? [new Option(like.Shown, like.Shown)] : entry.Options,
            Hint = before is { } had ? $"{entry.Hint}; Up brings {had.Shown}, as {had.Tag}" : entry.Hint,
            Accept = (text, now) => text.Trim().Length > 0 ? entry.Accept(text, now)
                : Transition.Say(Moved(s, now, 1), $"{unit.Tag} stays without a position in {now.House.NameOf(preset)}: nothing was typed."),
        };
    }

    /// <summary>The position of the nearest unit above that has one in a preset; null where none has.</summary>
    private static (string Tag, string Shown)? Before(ControlsScreen s, ScreenContext context, Item preset)
    {
        var units = s.Units(context);
        return units.TakeWhile(u => u.Id != s.Unit(context)!.Id).Reverse()
            .Select(u => (u.Tag, Shown: PresetFacts.Position.ShowOf(preset, context.House, u.Id))).Where(u => u.Shown.Length > 0)
            .Select(u => ((string, string)?)u).FirstOrDefault();
    }
}
