using TrimOut.Core;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Firm;

/// <summary>All houses of the user's folders in one list: the phases of each, its stops, and what is said of it by the list that is chosen.</summary>
internal sealed record FirmScreen(IFirmBoard Board, int List, int Selected) : IFiltered, ITable, ITicking
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
    ];

    public string Search { get; init; } = "";

    public bool Ticking => Board.Left > 0 || Board.IsWatched;

    /// <summary>The list that is chosen.</summary>
    public FirmList Chosen => FirmList.All[List];

    private const string Stale = "~";

    public DateTimeOffset? EndsAt(ScreenContext context) => null;

    /// <summary>All houses of the user's folders, shown as they were kept.</summary>
    public static Ask.Beside Find() => new("Looking at all houses", (desk, _, _) => new Ask.Open(new FirmScreen(desk.Firm(), 0, 0)));

    /// <summary>The same list, filter and house as before a house was opened, with the houses as they are now.</summary>
    public FirmScreen Again(IFirmBoard now, ScreenContext context)
    {
        var to = this with { Board = now };
        return to with { Selected = Filtering.Keep(Shown(context.Today), Selected, to.Shown(context.Today), r => r.House.Path) };
    }

    /// <summary>The houses that are shown, each with what the list says of it.</summary>
    public IReadOnlyList<(FirmRow House, string Said)> Shown(DateOnly today)
    {
        var all = Board.Rows;
        return Shown(all, today, FirmVisits.Of(all.Select(r => r.Summary).OfType<HouseSummary>()));
    }

    private IReadOnlyList<(FirmRow House, string Said)> Shown(IReadOnlyList<FirmRow> all, DateOnly today, FirmVisits firm) =>
    [
        .. all.Select(r => (House: r, Said: Says(r, today, firm))).Where(r => r.Said is not null).Select(r => (r.House, r.Said!))
            .Where(r => Search.Length == 0 || Filtering.Fits($"{r.House.Name} {r.House.Path} {r.Item2}", Search)),
    ];

    public (int Shown, int All) Count(ScreenContext context) => (Shown(context.Today).Count, Board.Rows.Count);

    public FirmRow? Current(ScreenContext context) => Shown(context.Today) is var rows && Selected < rows.Count ? rows[Selected].House : null;

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown(context.Today), Selected, to.Shown(context.Today), r => r.House.Path) };
    }

    /// <summary>Another list, with the cursor on the same house where it is there.</summary>
    public FirmScreen Listing(int by, ScreenContext context)
    {
        var to = this with { List = Math.Clamp(List + by, 0, FirmList.All.Count - 1) };
        return to with { Selected = Filtering.Keep(Shown(context.Today), Selected, to.Shown(context.Today), r => r.House.Path) };
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var rows = Shown(context.Today);
        var x = 1;
        for (var at = 0; at < FirmList.All.Count; at++)
            x = area.Put(x, 0, FirmList.All[at].Name, at == List ? Tone.Selected : Tone.Dim) + 2;
        area.PutFit(1, 1, area.Width - 2, InShort(rows), Tone.Text);
        area.Put(2, 2, "House", Tone.Heading);
        area.Put(Marks, 2, string.Concat(PhaseNames.All.Select(p => Ribbon.Number(p)[^1])), Tone.Heading);
        area.Put(StopsAt, 2, "Stop", Tone.Heading);
        area.Put(UnitsAt, 2, "Units", Tone.Heading);
        area.PutFit(SaidAt, 2, area.Width - SaidAt, Chosen.Name, Tone.Heading);
        var below = Selected < rows.Count ? Below(rows[Selected].House, rows[Selected].Said) : "";
        var lines = Math.Clamp((below.Length / Math.Max(1, area.Width - 12)) + 1, 2, Math.Max(2,
            Math.Max(Math.Min(MostBelow, area.Height - Top - LeastListed), area.Height - Top - rows.Count)));
        var list = area.Rows(Top, area.Height - Top - lines);
        foreach (var (line, at) in Paging.Rows(list, rows.Count, Selected, at => this with { Selected = at }))
            DrawRow(list, line, rows[at].House, rows[at].Said, at == Selected, context);
        if (rows.Count == 0)
        {
            area.PutWrapped(2, Top, 3, Board.Rows.Count == 0 ? "There is no house in your folders yet. Esc goes back, where n begins one."
                : $"No house is in this list: {Chosen.Name}.", Tone.Strong);
        }
        if (Selected < rows.Count)
            area.PutWrapped(1, area.Height - lines, lines, below, Tone.Dim);
    }

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Shown(context.Today)
        .Select(r => (IReadOnlyList<string>)
        [
            r.House.Name, r.House.Path, NumberText.Plain(r.House.Summary?.Stops ?? 0), NumberText.Plain(r.House.Summary?.Finished ?? 0),
            NumberText.Plain(r.House.Summary?.Units ?? 0), r.Said,
        ]).Prepend(["House", "File", "Stops", "Finished", "Units", Chosen.Name]);

    private string InShort(IReadOnlyList<(FirmRow House, string Said)> shown) =>
        $"{NumberText.Plain(shown.Count)} of {NumberText.Counted(Board.Rows.Count, "house")}"
        + (shown.Sum(r => r.House.Summary?.Stops ?? 0) is > 0 and var stops
            ? $", {NumberText.Counted(stops, "stop")} in {(shown.Count == 1 ? "it" : "them")}" : "")
        + (Board.Rows.Count(r => r.Why is not null) is > 0 and var closed ? $"; {NumberText.Plain(closed)} can't be opened" : "")
        + (Board.Left is > 0 and var left ? $"; {NumberText.Plain(left)} to be read again ({Stale})" : "");

    private string? Says(FirmRow row, DateOnly today, FirmVisits firm)
    {
        if (Chosen == FirmList.Everything && row.Why is { } why)
            return $"can't be opened: {why}";
        if (row.Summary is not { } summary)
            return Chosen == FirmList.Everything ? "not read yet" : null;
        var said = string.Join("; ", Chosen.Of(summary, today, firm));
        return Chosen == FirmList.Everything && row.InDoubt ? $"saves in doubt; {said}" : said.Length > 0 ? said : null;
    }

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
        new KeyAction<FirmScreen>("right", "Next list", "Shows the next list: stops, who waits, what is due, orders, boxes, warranties.",
            (s, context) => new Transition(s.Listing(1, context))),
        new KeyAction<FirmScreen>("left", "List before", "Shows the list before.", (s, context) => new Transition(s.Listing(-1, context))) { OnBar = false },
        new KeyAction<FirmScreen>("w", "Write it", "Writes a paper over the houses that are listed: the plan of the week, or their call-off with one cut plan.",
            (s, _) => Transition.Type(s, AskPaper(s)))
            { Disabled = (s, context) => s.Current(context) is null ? "There is no house in this list." : null },
        Filtering.Key<FirmScreen>("houses", "name, folder, or what is said of it"),
        .. Moves.Through<FirmScreen>("house", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown(context.Today).Count) }),
    ];

    private static Entry AskPaper(FirmScreen screen) => new("Paper", WeekPlan,
        "week-plan: who is where in the next seven days; call-off: parts and one cut plan",
        (text, context) => new[] { WeekPlan, CallOff }.FirstOrDefault(p => p == text.Trim()) is not { } paper
            ? new Refusal($"Choose: {WeekPlan}, or {CallOff}.")
            : new Transition(screen, Write(paper, [.. screen.Shown(context.Today).Select(r => r.House.Path)], screen.Board.Rows)))
    {
        Options = [new Core.Facts.Option(WeekPlan, WeekPlan), new Core.Facts.Option(CallOff, CallOff)],
    };

    private const string WeekPlan = "week-plan";

    private const string CallOff = "call-off";

    private static Ask.Beside Write(string paper, IReadOnlyList<string> houses, IReadOnlyList<FirmRow> all) => new("Writing the paper", (desk, _, stop) =>
        desk.WriteOverHouses(paper, houses, all, stop).Then<Ask>(files => new Ask.Say($"Written: {string.Join(", ", files)}.")));
}
