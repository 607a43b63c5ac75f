using TrimOut.Core;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Firm;

/// <summary>All houses of the user's folders in one list: the phases of each, its stops, and what is said of it by the list that is chosen.</summary>
/// <param name="Board">The houses, which come and go by themselves.</param>
/// <param name="List">Which list is chosen.</param>
/// <param name="HousePath">The house under the cursor, which stays on it whatever comes and goes.</param>
/// <param name="Row">Where that house was, for when it is gone.</param>
internal sealed record FirmScreen(IFirmBoard Board, int List, string? HousePath, int Row) : IFiltered, ITable, ITicking
{
    private const int Names = 20;
    private const int Marks = 1 + Names + 1;
    private const int StopsAt = Marks + 13;
    private const int UnitsAt = StopsAt + 5;
    private const int SaidAt = UnitsAt + 9;
    private const int Top = 3;
    private const int MostBelow = 6;
    private const int LeastListed = 3;

    public string Title => "All houses";

    public IReadOnlyList<IKeyAction> Keys => FirmKeys.All;

    public IReadOnlyList<Sign> Signs =>
    [
        PhaseMarks.Stop with { Means = "in a house's row: an open stop in the phase above it" },
        PhaseMarks.Done with { Means = "in a house's row: every step of the phase is done" },
        PhaseMarks.Begun with { Means = "in a house's row: the phase is begun" },
        PhaseMarks.Nothing with { Means = "in a house's row: nothing of the phase is done yet" },
        PhaseMarks.NotAsked with { Means = "(a blank) in a house's row: the phase asks nothing of this house" },
        new(g => FindingSigns.Counted(g.Stop, 2), "in a house's row: two open stops in all"),
        new(_ => Stale, "before a house: it changed since this was known, and is read again beside the keys"),
        new(_ => Clash, "behind a house: two laptops disagree about something in it, and nobody chose yet"),
    ];

    public string Search { get; init; } = "";

    public bool Ticking => true;

    /// <summary>The list that is chosen.</summary>
    public FirmList Chosen => FirmList.All[List];

    private const string Stale = "~";

    private const string Clash = "x";

    public DateTimeOffset? EndsAt(ScreenContext context) => null;

    /// <summary>All houses of the user's folders, shown as they were kept.</summary>
    public static Ask.Beside Find() => new("Looking at all houses", (desk, _, _) => new Ask.Open(On(desk.Firm())));

    /// <summary>What the houses were chosen by, in words; empty where all are listed.</summary>
    public string Filter => $"{(Chosen == FirmList.Everything ? "" : Chosen.Id)} {Search}".Trim();

    /// <summary>The first of all houses.</summary>
    public static FirmScreen On(IFirmBoard board) => new(board, 0, board.Now.Rows.Count > 0 ? board.Now.Rows[0].Path : null, 0);

    /// <summary>The houses that are shown, each with what the list says of it.</summary>
    public IReadOnlyList<(FirmRow House, string Said)> Shown(DateOnly today) => Board.Now.In(Chosen, today, Search);

    public (int Shown, int All) Count(ScreenContext context) => (Shown(context.Today).Count, Board.Now.Rows.Count);

    public FirmRow? Current(ScreenContext context) => Shown(context.Today) is { Count: > 0 } rows ? rows[At(rows)].House : null;

    public IScreen Searching(string search, ScreenContext context) => this with { Search = search, Row = 0 };

    /// <summary>Another list, with the cursor on the same house where it is there; from the top of a list to the top of the other.</summary>
    public FirmScreen Listing(ScreenContext context, int by)
    {
        var to = this with { List = Math.Clamp(List + by, 0, FirmList.All.Count - 1), Row = 0 };
        // No house: the top of a list, empty ones in between too.
        return HousePath is not null && !(Shown(context.Today) is { Count: > 0 } rows && rows[0].House.Path == HousePath) ? to
            : to.Shown(context.Today) is { Count: > 0 } others ? to.On(others, 0) : to with { HousePath = null };
    }

    /// <summary>So many houses on.</summary>
    public FirmScreen Moved(ScreenContext context, int by) =>
        Shown(context.Today) is { Count: > 0 } rows ? On(rows, Paging.Move(At(rows), by, rows.Count)) : this;

    private FirmScreen On(IReadOnlyList<(FirmRow House, string Said)> rows, int row) => this with { HousePath = rows[row].House.Path, Row = row };

    /// <summary>Where the house under the cursor is; where it is gone, whichever took its place.</summary>
    private int At(IReadOnlyList<(FirmRow House, string Said)> rows)
    {
        for (var at = 0; at < rows.Count; at++)
        {
            if (rows[at].House.Path == HousePath)
                return at;
        }
        return Math.Clamp(Row, 0, Math.Max(0, rows.Count - 1));
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var now = Board.Now;
        var rows = now.In(Chosen, context.Today, Search);
        var selected = At(rows);
        var x = 1;
        for (var at = 0; at < FirmList.All.Count; at++)
            x = area.Put(x, 0, FirmList.All[at].Name, at == List ? Tone.Selected : Tone.Dim) + 2;
        area.PutFit(1, 1, area.Width - 2, InShort(now, rows) + (Chosen.First is null || rows.Count < 2 ? "" : "; the most pressing first"), Tone.Text);
        area.Put(2, 2, "House", Tone.Heading);
        area.Put(Marks, 2, string.Concat(PhaseNames.All.Select(p => Ribbon.Number(p)[^1])), Tone.Heading);
        area.Put(StopsAt, 2, "Stop", Tone.Heading);
        area.Put(UnitsAt, 2, "Units", Tone.Heading);
        area.PutFit(SaidAt, 2, area.Width - SaidAt, Chosen.Name, Tone.Heading);
        var below = selected < rows.Count ? Below(rows[selected].House, rows[selected].Said) : "";
        var lines = Math.Clamp((below.Length / Math.Max(1, area.Width - 12)) + 1, 2, Math.Max(2,
            Math.Max(Math.Min(MostBelow, area.Height - Top - LeastListed), area.Height - Top - rows.Count)));
        var list = area.Rows(Top, area.Height - Top - lines);
        foreach (var (line, at) in Paging.Rows(list, rows.Count, selected, at => On(rows, at)))
            DrawRow(list, line, rows[at].House, rows[at].Said, at == selected, context);
        if (rows.Count == 0)
        {
            area.PutWrapped(2, Top, 3, now.Rows.Count == 0 ? "There is no house in your folders yet. Esc goes back, where n begins one."
                : $"No house is in this list: {Chosen.Name}.", Tone.Strong);
        }
        if (selected < rows.Count)
            area.PutWrapped(1, area.Height - lines, lines, below, Tone.Dim);
    }

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Shown(context.Today)
        .Select(r => (IReadOnlyList<string>)
        [
            r.House.Name, r.House.Path, NumberText.Plain(r.House.Summary?.Stops ?? 0), NumberText.Plain(r.House.Summary?.Finished ?? 0),
            NumberText.Plain(r.House.Summary?.Units ?? 0), r.Said,
        ]).Prepend(["House", "File", "Stops", "Finished", "Units", Chosen.Name]);

    private static string InShort(FirmHousesNow now, IReadOnlyList<(FirmRow House, string Said)> shown) =>
        $"{NumberText.Plain(shown.Count)} of {NumberText.Counted(now.Rows.Count, "house")}"
        + (shown.Sum(r => r.House.Summary?.Stops ?? 0) is > 0 and var stops
            ? $", {NumberText.Counted(stops, "stop")} in {(shown.Count == 1 ? "it" : "them")}" : "")
        + (now.Rows.Count(r => r.Why is not null) is > 0 and var closed ? $"; {NumberText.Plain(closed)} can't be opened" : "")
        + (now.Left is > 0 and var left ? $"; {NumberText.Plain(left)} to be read again ({Stale})" : "");

    /// <summary>All that the list says of a house, which may not fit its row; where it is, and what is to be said of how it was found.</summary>
    private static string Below(FirmRow house, string said) => house.Why ?? string.Join(" ",
        [$"{house.Name}: {said}.", house.Path, .. house.Remarks, .. house.Copies.Select(c => $"{c} is a copy of it, counted once.")]);

    private static void DrawRow(Area list, int line, FirmRow house, string said, bool chosen, ScreenContext context)
    {
        var tone = chosen ? Tone.Selected : Tone.Text;
        list.PutFit(0, line, list.Width, "", tone);
        list.Put(0, line, house.Stale ? Stale : " ", tone);
        list.PutFit(1, line, Names, house.Name, tone);
        if (house.Summary is { } summary)
        {
            for (var at = 0; at < summary.Phases.Length; at++)
            {
                var phase = summary.Phases[at];
                var mark = phase.Stops > 0 ? PhaseMarks.Stop : PhaseMarks.Of(phase.Sum());
                list.Put(Marks + at, line, mark.Drawn(context.Glyphs), phase.Stops > 0 && !chosen ? Tone.Stop : tone);
            }
            if (!summary.Conflicts.IsEmpty)
                list.Put(Marks - 1, line, Clash, chosen ? tone : Tone.Caution);
            if (summary.Stops > 0)
                list.Put(StopsAt, line, FindingSigns.Counted(context.Glyphs.Stop, summary.Stops), chosen ? tone : Tone.Stop);
            list.PutFit(UnitsAt, line, SaidAt - UnitsAt - 1, $"{NumberText.Plain(summary.Finished)}/{NumberText.Plain(summary.Units)}", tone);
        }
        list.PutFit(SaidAt, line, list.Width - SaidAt, said, tone);
    }
}

/// <summary>Keys of the houses of a firm.</summary>
internal static class FirmKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<FirmScreen>("enter", "Open", "Opens the house.",
            (s, context) => new Transition(s, s.Current(context)!.Path is var path ? new Ask.Enter(d => d.Open(path), path) : null))
            { Disabled = (s, context) => s.Current(context) is null ? "There is no house in this list." : null },
        new KeyAction<FirmScreen>("right", "Next list", "Shows the next list: stops, conflicts, who waits, what is due, orders, boxes, warranties.",
            (s, context) => new Transition(s.Listing(context, 1))),
        new KeyAction<FirmScreen>("left", "List before", "Shows the list before.", (s, context) => new Transition(s.Listing(context, -1))) { OnBar = false },
        new KeyAction<FirmScreen>("w", "Write it", "Writes a paper over the houses that are listed: the plan of the week, or their call-off with one cut plan.",
            (s, _) => Transition.Type(s, AskPaper(s)))
            { Disabled = (s, context) => s.Current(context) is null ? "There is no house in this list." : null },
        Filtering.Key<FirmScreen>("houses", "name, folder, or what is said of it"),
        .. Moves.Through<FirmScreen>("house", (s, context, by) => s.Moved(context, by)),
    ];

    private static Entry AskPaper(FirmScreen screen) => new("Paper", WeekPlan,
        "week-plan: who is where in the next seven days; call-off: parts and one cut plan",
        (text, context) => new[] { WeekPlan, CallOff }.FirstOrDefault(p => p == text.Trim()) is not { } paper
            ? new Refusal($"Choose: {WeekPlan}, or {CallOff}.")
            : new Transition(screen, Write(paper, [.. screen.Shown(context.Today).Select(r => r.House.Path)], screen.Board.Now.Rows, screen.Filter)))
    {
        Options = [new Core.Facts.Option(WeekPlan, WeekPlan), new Core.Facts.Option(CallOff, CallOff)],
    };

    private const string WeekPlan = "week-plan";

    private const string CallOff = "call-off";

    private static Ask.Beside Write(string paper, IReadOnlyList<string> houses, IReadOnlyList<FirmRow> all, string filter) => new("Writing the paper",
        (desk, _, stop) => desk.WriteOverHouses(paper, houses, all, filter, stop).Then<Ask>(files => new Ask.Say($"Written: {string.Join(", ", files)}.")));
}
