using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.InService;
using TrimOut.Screens.Office;
using TrimOut.Screens.People;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Rooms;
using TrimOut.Screens.Schedules;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>Keys of the job sheet.</summary>
internal static class JobSheetKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<JobSheetScreen>("enter", "Open", "All details of the unit, or of the window that was left out, to be filled in.",
            (s, context) => Transition.Open(s, s.LeftOut(context) is { } window ? SheetScreen.At(new OfItem(window.Id), context.House)
                : SheetScreen.OfUnit(s.Current(context)!))) { Disabled = (s, context) => s.LeftOut(context) is null ? NoUnit(s, context) : null },
        new KeyAction<JobSheetScreen>("space", "Mark next step",
            "Marks the unit's next step done, in the phase that is shown, and goes to the next unit; evidence is asked for first, and so is a later phase.",
            (s, context) => s.Picked.IsEmpty
                ? NextMark.One(s, context, (screen, after) => Moved(screen, after, 1))
                : PickedUnits.MarkNext(s, context)) { Disabled = NoUnit },
        new KeyAction<JobSheetScreen>("v", "Pick", "Picks the unit, to be marked together with others, or no longer; then the next unit.",
            (s, context) => new Transition(Moved(Toggled(s, s.UnitId!), context, 1))) { Disabled = NoUnit, OnBar = false },
        new KeyAction<JobSheetScreen>("V", "Pick all shown", "Picks every unit that is shown, or none where all are picked.", (s, context) =>
            JobSheetRows.Units(s, context).Select(u => u.Id).ToImmutableHashSet() is var shown && shown.IsSubsetOf(s.Picked)
                ? new Transition(s with { Picked = [] })
                : new Transition(s with { Picked = shown })) { OnBar = false },
        new KeyAction<JobSheetScreen>("S", "Sort", "Sorts by the walk, by stops, by what is least done, by tag.", (s, context) =>
            new Transition((s with { Order = (JobSheetOrder)(((int)s.Order + 1) % Enum.GetValues<JobSheetOrder>().Length) }).Fit(context))) { OnBar = false },
        new KeyAction<JobSheetScreen>(LineDoubts.Opens, "New window",
            "Adds a window by one line, with 2 units where two hang in it; what is not said carries over; out: and a reason leaves it out.",
            (s, context) => Transition.Type(s, NewWindow(s, context))),
        Filtering.Key<JobSheetScreen>("units", "tag, kind, room or floor"),
        new KeyAction<JobSheetScreen>("g", "Go to tag", "Jumps to a unit by its tag.",
            (s, context) => Transition.Type(s, new Entry("Tag", "", "such as W07", (text, now) => GoTo(s, now, text))
            {
                Options = [.. context.House.Units.Select(u => new Option(u.Id, u.Tag)),
                    .. context.House.Windows.Where(w => w.LeftOut).Select(w => new Option(w.Id, w.Tag))],
            })) { OnBar = false },
        new KeyAction<JobSheetScreen>("!", "Stops only", "Shows only units with open stops, or all.",
            (s, context) => new Transition((s with { OnlyStops = !s.OnlyStops }).Fit(context))),
        new KeyAction<JobSheetScreen>("o", "Open only", "Shows only units with something left to do in the phase, or all.",
            (s, context) => new Transition((s with { OnlyOpen = !s.OnlyOpen }).Fit(context))) { OnBar = false },
        new KeyAction<JobSheetScreen>("right", "Next phase", "Shows the next phase.",
            (s, context) => ShowPhase(s, context, 1)) { OnBar = false, Also = ["]"] },
        new KeyAction<JobSheetScreen>("left", "Phase before", "Shows the phase before.",
            (s, context) => ShowPhase(s, context, -1)) { OnBar = false, Also = ["["] },
        new KeyAction<JobSheetScreen>("#", "Phases", "Shows the phases with their names and how far each is, or in one line.",
            (s, _) => new Transition(s with { OtherHead = !s.OtherHead })) { OnBar = false },
        new KeyAction<JobSheetScreen>("*", "All", "Clears every filter, order and pick.",
            (s, context) => new Transition(new JobSheetScreen(s.UnitId, null, false, false, "") { OtherHead = s.OtherHead }.Fit(context))) { OnBar = false },
        new KeyAction<JobSheetScreen>("f", "Findings", "Goes to the field that fixes the unit's worst finding.", (s, context) => Mend(s, context))
            { Disabled = NoUnit },
        new KeyAction<JobSheetScreen>("r", "Rooms", "Floors, rooms and windows as one walks: to be named, ordered and merged.",
            (s, context) => Transition.Open(s, RoomsScreen.On((s.LeftOut(context) ?? s.Current(context)?.Window)?.Id, context))) { OnBar = false },
        new KeyAction<JobSheetScreen>("+", "One more unit", "Adds a unit to this window, with what it shares with the one beside it.",
            (s, context) => Transition.Save(s, AddItems.Unit(context.House, s.Current(context)!.Window.Id))) { Disabled = NoUnit, OnBar = false },
        PeopleKeys.Opening<JobSheetScreen>(),
        OfficeKeys.Opening<JobSheetScreen>(),
        new KeyAction<JobSheetScreen>("I", "Schedule",
            "Takes windows in from an office's schedule: CSV, a spreadsheet or a building model; shown before anything is.",
            (s, context) => new Transition(s, SchedulesScreen.Find(context))) { OnBar = false },
        new KeyAction<JobSheetScreen>("B", "Take in photos",
            "Takes photos in from a folder or a stick: placed by a label seen in them, by a tag in their name, or by their time; shown before any is.",
            (s, context) => new Transition(s, PhotoFoldersScreen.Find(context))) { OnBar = false },
        UnitPhotosKeys.Opening<JobSheetScreen>(),
        ServiceKeys.Opening<JobSheetScreen>((s, context) => s.Current(context)?.Item),
        new KeyAction<JobSheetScreen>("-", "Leave out", LeavingOut.Help, (s, context) => Transition.Type(s, LeavingOut.Ask(s, s.Current(context)!.Window)))
            { Disabled = (s, context) => LeavingOut.NotBecause(s.LeftOut(context) ?? s.Current(context)?.Window), OnBar = false },
        new KeyAction<JobSheetScreen>("b", "Bring back", "Brings the window under the cursor back that was left out, or else a removed one, with all it had.",
            (s, context) => s.LeftOut(context) is { } window ? Transition.Save(s, LeaveOut.TakeIn(window)) : BringBack(s, context)) { OnBar = false },
        .. Moves.Through<JobSheetScreen>("unit", Moved),
    ];

    /// <summary>Shows another phase, and says which: that is where Space marks then. Before the first and after the last all are shown.</summary>
    private static Transition ShowPhase(JobSheetScreen s, ScreenContext context, int by)
    {
        var phase = Shift(s.PhaseShown, by);
        return Transition.Say((s with { PhaseShown = phase, Walked = null }).Fit(context),
            phase is { } shown ? $"{shown.Full()} is shown: Space marks in it." : "All phases are shown: Space marks the next step of each unit.");
    }

    private static string? NoUnit(JobSheetScreen s, ScreenContext context) => s.Current(context) is not null ? null
        : s.LeftOut(context) is { } window ? $"{window.Tag} is left out. b brings it back, Enter opens it." : "No unit is selected. n adds a window.";

    private static JobSheetScreen Toggled(JobSheetScreen s, string unit) => s with { Picked = s.Picked.SymmetricExcept([unit]) };

    private static JobSheetScreen Moved(JobSheetScreen s, ScreenContext context, int by)
    {
        var ids = JobSheetRows.Ids(s, context);
        var at = ids.ToList().FindIndex(id => id == s.UnitId);
        return ids.Count == 0 ? s : s with { UnitId = ids[Paging.Move(at, by, ids.Count)] };
    }

    private static Phase? Shift(Phase? phase, int by)
    {
        var next = (phase is { } shown ? (int)shown : -1) + by;
        return next < 0 || next >= PhaseNames.All.Count ? null : (Phase)next;
    }

    private static Result<Transition> GoTo(JobSheetScreen s, ScreenContext context, string text)
    {
        var window = context.House.FindTag(text.Trim());
        var id = context.House.Units.FirstOrDefault(u => SameName.Comparer.Equals(u.Tag, text))?.Id
            ?? (window is { LeftOut: true } ? window.Id : window?.Units.FirstOrDefault()?.Id);
        if (id is null)
        {
            return context.House.Items.Values.Any(i => i is { Removed: true, Kind: ItemKind.Window } && SameName.Comparer.Equals(context.House.NameOf(i), text))
                ? new Refusal($"{text.Trim()} was removed. Esc, then b, brings it back.")
                : new Refusal($"No unit has the tag {text.Trim()}.");
        }
        var there = s with { UnitId = id };
        return JobSheetRows.Ids(s, context).Contains(id) ? new Transition(there)
            : Transition.Say(there with { OnlyOpen = false, OnlyStops = false, Search = "" }, $"The filter hid {text.Trim()}: all is shown again.");
    }

    private const string LineHint = "Type: kind left/right WxH facing floor/ladder/scaffold inside/outside panel 2 units @room/floor, or out: and why";

    private static Entry NewWindow(JobSheetScreen s, ScreenContext context, string? hidden = null) => new(hidden ?? "New window",
        AddItems.NextTag(context.House) + " ",
        LineHint,
        (line, now) => QuickWindow.Read(line, now.House).Then(w => w.Add(now.House).Then<Transition>(draft => new Transition(s, new Ask.Save(draft, Another)))))
    {
        LineByLine = true,
        Doubt = (line, now) => LineDoubts.Of(line, now.House),
        // What may be typed is told until something is.
        Echo = (line, now) => QuickWindow.Read(line, now.House).Then<string>(w => line.Trim() == AddItems.NextTag(now.House)
            ? $"{w.Echo(now.House)}. {LineHint}" : w.Echo(now.House)),
    };

    /// <summary>After a window comes the line for the next one; Esc ends that.</summary>
    private static Transition Another(IScreen screen, ScreenContext context)
    {
        var newest = context.House.Windows.OrderBy(w => w.Item.Place).Last();
        var next = (JobSheetScreen)screen with { UnitId = newest.LeftOut ? newest.Id : newest.Units.FirstOrDefault()?.Id ?? ((JobSheetScreen)screen).UnitId };
        var hides = !JobSheetRows.Ids(next, context).Contains(next.UnitId);
        return Transition.Type(next, NewWindow(next, context, hides ? $"{newest.Tag} is saved; the filter hides it. New window" : null));
    }

    private static Transition Mend(JobSheetScreen s, ScreenContext context) =>
        UnitCard.Around(context, s.Current(context)!).FirstOrDefault() is { } finding
            ? Transition.Open(s, MendedAt.Of(context, finding.Found.Mends))
            : Transition.Say(s, UnitCard.NothingFound(context, s.Current(context)!));

    private static Transition BringBack(JobSheetScreen s, ScreenContext context)
    {
        var removed = context.House.Items.Values.Where(i => i is { Removed: true, Kind: ItemKind.Window }).OrderBy(i => i.Place).ToList();
        return removed.Count == 0
            ? Transition.Say(s, "No window was removed.")
            : Transition.Type(s, new Entry("Bring back", context.House.NameOf(removed[^1]), "the tag of a removed window",
            (text, now) => removed.LastOrDefault(i => string.Equals(now.House.NameOf(i), text.Trim(), StringComparison.OrdinalIgnoreCase)) is { } item
                ? Transition.Save(s, RemoveItems.BringBack(now.House, item))
                : new Refusal($"No removed window has the tag {text.Trim()}."))
            {
                Options = [.. removed.Select(i => new Option(i.Id, context.House.NameOf(i)))],
            });
    }
}
