using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Schedules;

/// <summary>Files that may be window schedules: beside the house, in the user's folders, on sticks.</summary>
internal sealed record SchedulesScreen(IReadOnlyList<ScheduleChoice> Found, int Selected) : IFiltered
{
    private const int Names = 40;

    public string Title => "Schedules";

    public IReadOnlyList<IKeyAction> Keys => SchedulesKeys.All;

    public string Search { get; init; } = "";

    /// <summary>The files that are shown.</summary>
    public IReadOnlyList<ScheduleChoice> Shown => Search.Length == 0 ? Found : [.. Found.Where(f => Filtering.Fits(f.Path, Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count, Found.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown, Selected, to.Shown, f => f) };
    }

    public ScheduleChoice? Current => Shown is var files && Selected < files.Count ? files[Selected] : null;

    /// <summary>Looks for them beside the keys: a stick may be slow.</summary>
    public static Ask.Beside Find(ScreenContext context) =>
        new("Looking for schedules", (desk, _, _) => new Ask.Open(new SchedulesScreen(desk.Schedules(context.Where), 0)));

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = area.PutWrapped(1, 0, 3, "Enter shows what a schedule would bring, before anything is taken in: CSV, a spreadsheet, or a building model (IFC). "
            + "O takes any file by its path.", Tone.Text);
        if (Found.Count == 0)
        {
            area.PutWrapped(1, y + 1, 3,
                "No such file was found beside this house, in your folders or on a stick. Plug it in and come back, or type its path: O.", Tone.Strong);
            return;
        }
        var list = area.Rows(y + 1, area.Height - y - 4);
        var files = Shown;
        foreach (var (line, at) in Paging.Rows(list, files.Count, Selected, at => this with { Selected = at }))
        {
            var (file, tone) = (files[at], at == Selected ? Tone.Selected : Tone.Text);
            list.PutFit(0, line, list.Width, "", tone);
            list.PutFit(1, line, Names, Path.GetFileName(file.Path), tone);
            list.PutFit(Names + 2, line, list.Width - Names - 2,
                file.Changed is { } when ? when.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) : "", tone);
        }
        if (Current is { } current)
            area.PutWrapped(1, area.Height - 2, 2, current.Path, Tone.Dim);
    }
}

/// <summary>Keys of the schedules.</summary>
internal static class SchedulesKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<SchedulesScreen>("enter", "Look at it", "Shows which windows would come in, what differs, and which column is taken for what.",
            (s, context) => new Transition(s, Look(context, s.Current!.Path)))
            { Disabled = (s, _) => s.Current is null ? "There is no file here. O takes one by its path." : null },
        new KeyAction<SchedulesScreen>("O", "Open a path", "Shows what a schedule would bring that is found by its path.",
            (s, _) => Transition.Type(s, new Entry("The schedule", "", "a file: .csv, .xlsx, .xls or .ifc",
                (text, now) => text.Trim().Length == 0 ? new Refusal("Type the path of the schedule.") : new Transition(s, Look(now, text.Trim()))))),
        Filtering.Key<SchedulesScreen>("files", "name or folder"),
        .. Moves.Through<SchedulesScreen>("file", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown.Count) }),
    ];

    private static Ask.Beside Look(ScreenContext context, string path) => new($"Reading {Path.GetFileName(path)}", (desk, _, _) =>
        desk.ReadSchedule(context.Log, path, ImmutableDictionary<string, string>.Empty)
            .Then<Ask>(read => new Ask.Open(ScheduleScreen.Of(path, read, ImmutableDictionary<string, string>.Empty))));
}
