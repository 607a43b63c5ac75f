using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Schedules;

/// <summary>What a schedule would bring: windows that are new, what differs, what could not be read, and which column is taken for what.</summary>
/// <param name="From">The file.</param>
/// <param name="Read">What was read of it.</param>
/// <param name="Named">Columns that were chosen here: field to header.</param>
/// <param name="Shown">The list that is shown.</param>
/// <param name="Selected">The row under the cursor.</param>
internal sealed record ScheduleScreen(string From, ScheduleRead Read, ImmutableDictionary<string, string> Named, int Shown, int Selected) : IFiltered, ITable
{
    private const int Detail = 4;
    private const int Head = 14;

    /// <summary>The list of columns among the lists.</summary>
    private const int OfColumns = 4;

    private const int OfGone = 2;
    private const int OfRemarks = 3;

    /// <summary>Before a row that is chosen.</summary>
    public static readonly Sign TakenIn = new(g => g.Done, "is taken in");

    /// <summary>Before a row that somebody left.</summary>
    public static readonly Sign Stays = new(g => g.Nothing, "is left as it is");

    public string Title => "What a schedule brings";

    public IReadOnlyList<IKeyAction> Keys => ScheduleKeys.All;

    /// <summary>How many lists there are.</summary>
    public const int Lists = 5;

    /// <summary>The rows of the list that is shown.</summary>
    public IReadOnlyList<ScheduleLine> Rows => Search.Length == 0 ? ListAt(Shown)
        : [.. ListAt(Shown).Where(r => Filtering.Fits($"{r.Head} {r.Text}", Search))];

    public string Search { get; init; } = "";

    public IReadOnlyList<Sign> Signs { get; } = [TakenIn, Stays];

    /// <summary>Rows that somebody turned: they are left, or, of what the house keeps, taken.</summary>
    public ImmutableHashSet<ScheduleLine> Turned { get; init; } = [];

    private bool Comes(ScheduleLine row) => row.Kept == Turned.Contains(row);

    private IEnumerable<Edit> EditsOf(bool kept) => Turned.Where(l => l.Kept == kept).SelectMany(l => l.Edits).Distinct();

    /// <summary>What becomes of windows that are not in the schedule, by tag; of those that are not there nothing.</summary>
    public ImmutableDictionary<string, GoneAs> Gone { get; init; } = ImmutableDictionary<string, GoneAs>.Empty;

    /// <summary>The row under the cursor; null where there is none.</summary>
    public ScheduleLine? Current => Selected < Rows.Count ? Rows[Selected] : null;

    /// <summary>Whether the row under the cursor can be taken or left.</summary>
    public bool CanChoose => Current is { } row && (Shown == OfGone || !row.Edits.IsEmpty);

    /// <summary>The same with the row under the cursor taken where it was left, or left; of a window that is gone what is next.</summary>
    public ScheduleScreen Chosen() => Current is not { } row ? this
        : Shown == OfGone ? this with { Gone = Gone.SetItem(row.Head, (GoneAs)(((int)As(row.Head) + 1) % Enum.GetValues<GoneAs>().Length)) }
        : this with { Turned = Turned.SymmetricExcept([row]) };

    /// <summary>The change of what is chosen; null where that is nothing.</summary>
    public Result<Draft>? Change(ScreenContext context)
    {
        var (windows, values, gone) = Coming;
        return windows + values + gone == 0 ? (Result<Draft>?)null
            : TakeRows.Of((Read.Draft ?? new Draft($"Import {Path.GetFileName(From)}")).And(new Draft("", [.. EditsOf(kept: true)])), EditsOf(kept: false),
                windows, values,
                Read.Missing.Select(t => (Window: context.House.FindTag(t), As: As(t))).Where(g => g.Window is not null).Select(g => (g.Window!, g.As)),
                context.Today);
    }

    /// <summary>How much of it is chosen.</summary>
    private (int Windows, int Values, int Gone) Coming
    {
        get
        {
            var gone = Read.Missing.Count(t => As(t) != GoneAs.Left);
            var afterAll = Read.Differing.Count(r => r.Kept && Comes(r));
            return Read.Draft is null ? (0, afterAll, gone)
                : (Read.Windows.Count(Comes), Read.Taken - Read.Differing.Count(r => !r.Kept && !Comes(r)) + afterAll, gone);
        }
    }

    private GoneAs As(string tag) => Gone.GetValueOrDefault(tag);

    public (int Shown, int All) Count(ScreenContext context) => (Rows.Count, ListAt(Shown).Length);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Rows, Selected, to.Rows, r => r) };
    }

    /// <summary>The column under the cursor; null where another list is shown.</summary>
    public ScheduleColumn? Column => Shown == OfColumns && Selected < Rows.Count ? Read.Columns.FirstOrDefault(c => c.Field == Rows[Selected].Head) : null;

    /// <summary>What would come in.</summary>
    public string InWords
    {
        get
        {
            var (windows, values, gone) = Coming;
            return string.Join(" and ", new[]
            {
                windows == 0 && values + gone > 0 ? "" : NumberText.Counted(windows, "window"), values == 0 ? "" : NumberText.Counted(values, "value"),
                gone == 0 ? "" : $"what becomes of {NumberText.Counted(gone, "window")} that {(gone == 1 ? "is" : "are")} gone",
            }.Where(w => w.Length > 0));
        }
    }

    /// <summary>Begins with what comes in.</summary>
    public static ScheduleScreen Of(string path, ScheduleRead read, ImmutableDictionary<string, string> named) => new(path, read, named, 0, 0);

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Rows.Select(r => (IReadOnlyList<string>)[r.Head, r.Text]);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var coming = Coming is not (0, 0, 0);
        var y = area.PutWrapped(1, 0, 2, coming ? $"{InWords} would come in. Enter takes that in, Space leaves a row; nothing was changed yet."
            : Read.Draft is null ? "Nothing would come in: there is no window to read, or this house has it all." : "Nothing is chosen.", Tone.Strong);
        y = area.PutWrapped(1, y, 2, $"From {From}{(Read.Sheet is { } sheet ? $", sheet {sheet}" : "")}.", Tone.Dim);
        if (!Read.Missing.IsEmpty)
            y = area.PutWrapped(1, y, 2, $"Not in this schedule{(Coming.Gone == 0 ? ", and left as they are" : "")}: {string.Join(", ", Read.Missing)}.",
                Tone.Caution);
        var x = 1;
        for (var at = 0; at < Lists; at++)
        {
            var (from, list) = (x, at);
            var asks = (at == OfGone && !Read.Missing.IsEmpty) || (at == OfRemarks && !Read.Remarks.IsEmpty);
            x = area.Put(x, y, $" {CountAt(at)} ", at == Shown ? Tone.Selected : asks ? Tone.Caution : Tone.Text) + 1;
            area.PutSpot(from, y, x - from, false, () => this with { Shown = list, Selected = 0 });
        }
        var rows = area.Rows(y + 1, area.Height - y - 1 - Detail);
        foreach (var (line, at) in Paging.Rows(rows, Rows.Count, Selected, at => this with { Selected = at }))
        {
            var (row, tone) = (Rows[at], at == Selected ? Tone.Selected : Tone.Text);
            rows.PutFit(0, line, rows.Width, "", tone);
            if (Shown < OfGone && !row.Edits.IsEmpty)
                rows.Put(1, line, (Comes(row) ? TakenIn : Stays).Drawn(context.Glyphs), tone);
            rows.PutFit(3, line, Head - 3, row.Head, tone);
            rows.PutFit(Head + 1, line, rows.Width - Head - 1, row.Text, tone);
        }
        if (Rows.Count == 0 && Search.Length == 0)
            rows.Put(1, 0, "Nothing.", Tone.Dim);
        var detail = area.Rows(area.Height - Detail, Detail);
        for (var column = 0; column < detail.Width; column++)
            detail.Put(column, 0, context.Glyphs.Across, Tone.Dim);
        if (Selected < Rows.Count)
            detail.PutWrapped(1, 1, Detail - 1, $"{Rows[Selected].Head}: {Rows[Selected].Text}{(Column is { } of ? $" ({of.Help})" : "")}", Tone.Text);
    }

    private ImmutableArray<ScheduleLine> ListAt(int list) => list switch
    {
        0 => Read.Windows,
        1 => Read.Differing,
        OfGone => [.. Read.Missing.Select(t => new ScheduleLine(t,
            Read.Standing.TryGetValue(t, out var there) ? $"{there}: {Becomes(As(t))}" : Becomes(As(t))))],
        OfRemarks => Read.Remarks,
        _ => [.. Read.Columns.Select(c => new ScheduleLine(c.Field, c.From))],
    };

    private static string Becomes(GoneAs gone) => gone switch
    {
        GoneAs.Noted => "its note says that it is gone from the schedule of today",
        GoneAs.LeftOut => "is left out, gone from the schedule of today",
        _ => "stays as it is; Space notes that it is gone, or leaves it out",
    };

    private string CountAt(int list) => list switch
    {
        0 => NumberText.Counted(Read.Windows.Length, "new window"),
        1 => NumberText.Counted(Read.Differing.Length, "value differs", "values differ"),
        OfGone => $"{NumberText.Plain(Read.Missing.Length)} gone",
        OfRemarks => NumberText.Counted(Read.Remarks.Length, "remark"),
        _ => $"columns ({NumberText.Plain(Read.Unused.Length)} not used)",
    };
}

/// <summary>Keys of what a schedule brings.</summary>
internal static class ScheduleKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<ScheduleScreen>("enter", "Take", "Takes what is chosen into this house, after a question; one undo takes it back.", (s, context) =>
            new Transition(s, new Ask.Confirm($"Take in {s.InWords}? y takes them in (undo takes them back), any other key leaves this house as it is.",
                Ask.Confirm.AlsoYes,
                new Transition(s, new Ask.Save(s.Change(context)!.Value, (_, after) => new Transition(JobSheet.JobSheetScreen.At(after)))))))
            { Disabled = NotBecause },
        new KeyAction<ScheduleScreen>("space", "Take or leave",
            "Leaves the row, or takes it after all; of a window that is gone: notes it, leaves it out, or lets it be.",
            (s, _) => new Transition(s.Chosen()))
        {
            Disabled = (s, _) => s.CanChoose ? null : "This row is not taken by itself: new windows, values that differ, and windows that are gone are.",
        },
        new KeyAction<ScheduleScreen>("t", "Type a column", "Takes a detail from another column; the same office's next schedule is read so too.",
            (s, _) => Transition.Type(s, Other(s, s.Column!)))
            { Disabled = (s, _) => s.Column is null ? "Right goes to the list of columns: there a detail can be taken from another one." : null },
        new KeyAction<ScheduleScreen>("right", "Next list", "New windows, what differs, windows that are gone, remarks, columns.",
            (s, _) => new Transition(Turned(s, 1))),
        new KeyAction<ScheduleScreen>("left", "List before", "The list before.", (s, _) => new Transition(Turned(s, -1))) { OnBar = false },
        Filtering.Key<ScheduleScreen>("rows", "tag, line, detail, or what is said"),
        .. Moves.Through<ScheduleScreen>("row", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Rows.Count) }),
    ];

    private static string? NotBecause(ScheduleScreen s, ScreenContext context) => s.Change(context) is not { } draft
        ? s.Read.Draft is null ? "Nothing would come in." : "Nothing is chosen."
        : !draft.Ok ? draft.Reason
        : draft.Value.Edits.IsEmpty ? "The notes say already what is gone."
        : context.ReadOnlyBecause is { } why ? $"This house is open for reading only: {why}" : null;

    private static Entry Other(ScheduleScreen s, ScheduleColumn column) => new($"{column.Field} from", column.Name + column.Said,
        "a header or a part of it; =mm behind it: the unit of bare numbers; empty: none",
        (text, now) => new Transition(s, new Ask.Beside($"Reading {Path.GetFileName(s.From)}", (desk, _, _) =>
        {
            // What is only a unit is that of the column as it is.
            var typed = text.Trim();
            var named = s.Named.SetItem(column.Field, typed.StartsWith('=') ? $"{column.Name}{typed}" : typed);
            return desk.ReadSchedule(now.Log, s.From, named).Then<Ask>(read => new Ask.Open(s with { Read = read, Named = named }, InPlace: true));
        })))
    {
        Options = [.. s.Read.Unused.Concat(s.Read.Columns.Select(c => c.Header).OfType<string>()).Distinct().Select(h => new Option(h, h))],
    };

    private static ScheduleScreen Turned(ScheduleScreen s, int by) =>
        s with { Shown = (s.Shown + by + ScheduleScreen.Lists) % ScheduleScreen.Lists, Selected = 0 };
}
