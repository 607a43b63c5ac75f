using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Cables;

/// <summary>Home runs: cable, way, length against what the kit allows, and both tests.</summary>
internal sealed record CablesScreen(int Selected) : IFiltered, IAsked, ITable
{
    /// <summary>A unit's card needs so much beside the columns.</summary>
    private const int LeastCard = 42;

    public string Title => "Cables";

    public Unit? UnitAt(ScreenContext context) => Current(context)?.Unit;

    public AskedFigures? FiguresAt(ScreenContext context) =>
        UnitAt(context) is { } unit ? new AskedFigures(unit.Tag, UnitFigures.Of(unit), LegFacts.Length) : null;

    public IReadOnlyList<IKeyAction> Keys => CablesKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [.. CableColumn.All.Select(c => c.Sign), .. FindingSigns.Counting];

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        [[.. CableColumn.All.Select(c => c.Sign.Drawn(context.Glyphs))],
            .. Runs(context).Select(r => (IReadOnlyList<string>)[.. CableColumn.All.Select(c => c.Shown(r))])];

    public static CablesScreen At(ScreenContext context) => new(0);

    public string? TypesBy(ScreenContext context) => Current(context) is null ? null : "t";

    public string Search { get; init; } = "";

    /// <summary>The runs that are shown.</summary>
    public IReadOnlyList<HomeRun> Runs(ScreenContext context) =>
        Search.Length == 0 ? context.House.Runs : [.. context.House.Runs.Where(r => Filtering.Fits(TextOf(r), Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Runs(context).Count, context.House.Runs.Length);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Runs(context), Selected, to.Runs(context), r => r.Id) };
    }

    public HomeRun? Current(ScreenContext context) => Runs(context) is var runs && Selected < runs.Count ? runs[Selected] : null;

    public IScreen Fit(ScreenContext context) => this with { Selected = Paging.Move(Selected, 0, Runs(context).Count) };

    private static string TextOf(HomeRun run) =>
        string.Join(' ', [run.Unit.Tag, run.Unit.Window.Room?.FullName, run.Cable?.Name, run.Panel?.Name, .. run.Labels]);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var runs = Runs(context);
        if (context.House.Runs.IsEmpty)
        {
            area.PutWrapped(2, 1, 2, "No unit is fed by a panel, so there is no home run.", Tone.Strong);
            return;
        }
        var height = Math.Max(3, area.Height - (area.Height > 30 ? 16 : 9));
        var list = area.Rows(0, height);
        if (Current(context) is { } chosen && area.Width >= CableColumn.Width + LeastCard)
        {
            for (var y = 0; y < height; y++)
                area.Put(CableColumn.Width, y, context.Glyphs.Down, Tone.Dim);
            UnitCard.Draw(list.Part(CableColumn.Width + 2, 0, area.Width - CableColumn.Width - 2, height - 1), chosen.Unit, context);
            list = list.Part(0, 0, CableColumn.Width, height);
        }
        foreach (var column in CableColumn.All)
        {
            if (column.IsFigure)
                list.PutFigure(column.At, 0, column.Cells, column.Sign.Drawn(context.Glyphs), Tone.Dim);
            else
                list.PutFit(column.At, 0, column.Cells, column.Sign.Drawn(context.Glyphs), Tone.Dim);
        }
        var lines = list.Rows(1, list.Height - 1);
        var seen = Paging.Rows(lines, runs.Count, Selected, at => this with { Selected = at });
        var cells = CableColumn.All.ToDictionary(c => c, c => Decimals.Alike([.. seen.Select(r => c.Shown(runs[r.At]))]));
        foreach (var (row, (y, at)) in seen.Index())
            DrawRow(lines.Rows(y, 1), runs[at], column => cells[column][row], context, at == Selected);
        if (Current(context) is { } run)
            DrawWay(area.Rows(height, area.Height - height), run, context);
    }

    private static void DrawRow(Area line, HomeRun run, Func<CableColumn, string> shownIn, ScreenContext context, bool selected)
    {
        var tone = selected ? Tone.Selected : Tone.Text;
        line.PutFit(0, 0, line.Width, "", tone);
        FindingSigns.PutCount(line, 0, 0, UnitCard.Around(context, run.Unit), context.Glyphs, selected ? tone : null);
        foreach (var column in CableColumn.All)
        {
            var text = shownIn(column) is { Length: > 0 } shown ? shown : "-";
            // A mark stands in the cell behind its column, so that figures with and without one stand below each other.
            if (column.IsFigure)
                line.PutFigure(column.At, 0, column.Cells + 1, text[^1] == '?' ? text : text + " ", tone);
            else
                line.PutFit(column.At, 0, column.Cells, text, tone);
        }
    }

    private static void DrawWay(Area area, HomeRun run, ScreenContext context)
    {
        var y = 0;
        var (heading, unread) = ($"{run.Unit.Tag}: the way from the panel", UnitCard.Unread(run.Unit, context));
        var besides = area.Width - TextWidth.Of(unread);
        if (TextWidth.Of(heading) + 2 > besides)
            area = UnitCard.PutUnread(area, run.Unit, context);
        else
            area.PutFit(besides, 0, area.Width - besides, unread, Tone.Caution);
        area.PutFit(0, y++, Math.Min(besides, area.Width), heading, Tone.Heading);
        var drawn = area.Width >= 60 && area.Height > 8 ? RouteDrawing.Draw(area.Rows(y, area.Height - y - 3), run, context.Glyphs) : 0;
        y += drawn;
        var way = string.Join($" {context.Glyphs.Arrow} ",
            run.Legs.Select(l => $"{l.Show(LegFacts.Direction)} {l.Show(LegFacts.Length)} {l.Show(LegFacts.Place)}".Trim()));
        y = area.PutWrapped(0, y, 3,
            run.Legs.IsEmpty
            ? "No leg yet. l types them in one line, from the panel to the window."
            : $"panel {context.Glyphs.Arrow} {way} {context.Glyphs.Arrow} {run.Unit.Tag}", Tone.Text);
        if (CableColumn.LegsWithoutLength(run) is { Count: > 0 } blank)
        {
            y = area.PutWrapped(0, y, 2, $"No length is known of leg {string.Join(", ", blank)}, so no length of the run is. Enter opens its details.",
                Tone.Caution);
        }
        if (run.ShownBeforeLimit is { } whole && HouseCuts.WhyHeld(run) is null && !HouseCuts.IsPulled(run) && y < area.Height)
        {
            y = area.PutWrapped(0, y, 2,
                UncheckedValues.Marked($"Cut {run.ShownNeeded}, not {whole}: its cable may be no longer.", run.UncheckedInNeeded.Count > 0),
                Tone.Caution);
        }
        if (CableColumn.SheetsToAsk(run) is { Length: > 0 } ask && y < area.Height)
            y = area.PutWrapped(0, y, 2, $"How long it may be is not known. Ask the sheets (9): {ask}.", Tone.Caution);
        foreach (var finding in context.Report.About(run.Item).Where(f => f.Open).Take(3))
        {
            if (y < area.Height)
                y = UnitCard.Put(area, y, finding, context);
        }
    }
}

/// <summary>Keys of the cables.</summary>
internal static class CablesKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<CablesScreen>("enter", "Details", "All details of the run and its unit, at what is still to be said of the run.",
            (s, context) => Transition.Open(s, AllFacts(s.Current(context)!, context))) { Disabled = NoRun },
        new KeyAction<CablesScreen>("t", "Type a reading", "Types the test reading that is due, or fixes the last one, and goes to the next run.",
            (s, context) => Transition.Type(s, Reading(s, context))) { Disabled = NoRun },
        new KeyAction<CablesScreen>("l", LegsEntry.Name, LegsEntry.Help,
            (s, context) => Transition.Type(s, LegsEntry.For(s, s.Current(context)!, (screen, after) =>
                ((CablesScreen)screen).Current(after) is { } run
                    ? Transition.Open(screen, SheetScreen.OfUnit(run.Unit).On($"{run.Legs[^1].Id}/{LegFacts.Direction.Name}"))
                    : new Transition(screen)))) { Disabled = NoRun },
        new KeyAction<CablesScreen>("p", "Cut plan", "Which run comes out of which box; planned beside the keys.",
            (s, context) => new Transition(s, CutPlanScreen.Plan(context))),
        new KeyAction<CablesScreen>("n", "New box", "Adds a box of cable on hand and opens it.",
            (s, context) => Transition.Type(s, new Entry("Label on the box", AddItems.NextBox(context.House), "what is written on it",
                (text, now) => NewBox(s, now, text)))),
        new KeyAction<CablesScreen>("f", "Findings", "Goes to the field that fixes the run's worst finding.", (s, context) =>
            context.Report.About(s.Current(context)!.Item).FirstOrDefault(f => f.Open) is { } finding
                ? Transition.Open(s, MendedAt.Of(context, finding.Found.Mends))
                : Transition.Say(s, UnitCard.NothingFound(context, s.Current(context)!.Unit))) { Disabled = NoRun },
        Filtering.Key<CablesScreen>("runs", "tag, room, cable, panel or label"),
        .. Moves.Through<CablesScreen>("run", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Runs(context).Count) }),
    ];

    private static SheetScreen AllFacts(HomeRun run, ScreenContext context) => SheetScreen.OfUnit(run.Unit).On($"{run.Id}/{NextOf(run, context).Name}");

    private static Result<Transition> NewBox(CablesScreen s, ScreenContext context, string label) =>
        AddItems.Named(context.House, ItemKind.Box, label).Then<Transition>(draft => new Transition(s, new Ask.Save(draft, (screen, after) =>
            Transition.Open(screen, SheetScreen.At(new OfItem(after.House.Boxes[^1].Id), after.House)))));

    private static readonly Fact[] ToSay =
        [RunFacts.Cable, RunFacts.TailAtWindow, RunFacts.TailAtPanel, RunFacts.LabelAtWindow, RunFacts.LabelAtPanel, RunFacts.FirstLoop, RunFacts.TailFound,
            RunFacts.SecondLoop, RunFacts.Panel, RunFacts.Output, RunFacts.OpenVolts, RunFacts.LoadedVolts];

    /// <summary>The first fact of a run that is missing in the phase that its unit is in, or the reading of that phase where none is.</summary>
    private static Fact NextOf(HomeRun run, ScreenContext context)
    {
        var now = Progress.Current(run.Unit, context.Steps) ?? Phase.Handover;
        return ToSay.FirstOrDefault(f => f.Phase <= now && run.Item.Latest(f.Name)?.Stored is null)
            ?? (now < Phase.CloseIn ? RunFacts.FirstLoop : now < Phase.Power ? RunFacts.SecondLoop : RunFacts.LoadedVolts);
    }

    private static Entry Reading(CablesScreen s, ScreenContext context)
    {
        var run = s.Current(context)!;
        var fact = run.Item.Latest(RunFacts.FirstLoop.Name)?.Stored is null ? RunFacts.FirstLoop : RunFacts.SecondLoop;
        return FactEntry.For(s, context.House, run.Item, fact, then: (screen, after) =>
            new Transition((CablesScreen)screen with { Selected = Paging.Move(s.Selected, 1, s.Runs(after).Count) }));
    }

    private static string? NoRun(CablesScreen s, ScreenContext context) => s.Current(context) is null ? "There is no home run here." : null;
}
