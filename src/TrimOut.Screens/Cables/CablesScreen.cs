using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Cables;

/// <summary>Home runs: cable, way, length against what the kit allows, and both tests.</summary>
internal sealed record CablesScreen(int Selected) : IScreen, IAsked
{
    public string Title => "Cables";

    public Unit? UnitAt(Sight sight) => Current(sight)?.Unit;

    public AskedFigures? FiguresAt(Sight sight) => UnitAt(sight) is { } unit ? new AskedFigures(unit.Tag, UnitFigures.Of(unit), LegFacts.Length) : null;

    public IReadOnlyList<IKeyAction> Keys => CablesKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [.. CableColumn.All.Select(c => c.Sign), .. FindingSigns.All];

    public static CablesScreen At(Sight sight) => new(0);

    public HomeRun? Current(Sight sight) => Selected < sight.House.Runs.Length ? sight.House.Runs[Selected] : null;

    public IScreen Fit(Sight sight) => this with { Selected = Paging.Move(Selected, 0, sight.House.Runs.Length) };

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        var runs = sight.House.Runs;
        if (runs.IsEmpty)
        {
            area.PutWrapped(2, 1, 2, "No unit is fed by a panel, so there is no home run.", Tone.Strong);
            return;
        }
        var height = Math.Max(3, area.Height - (area.Height > 30 ? 16 : 9));
        var list = area.Rows(0, height);
        foreach (var column in CableColumn.All)
            list.Put(column.At, 0, column.Sign.Drawn(sight.Glyphs), Tone.Dim);
        var lines = list.Rows(1, list.Height - 1);
        foreach (var (y, at) in Paging.Rows(lines, runs.Length, Selected))
            DrawRow(lines.Rows(y, 1), runs[at], sight, at == Selected);
        if (Current(sight) is { } run)
            DrawWay(area.Rows(height, area.Height - height), run, sight);
    }

    private static void DrawRow(Area line, HomeRun run, Sight sight, bool selected)
    {
        var tone = selected ? Tone.Selected : Tone.Text;
        line.PutFit(0, 0, line.Width, "", tone);
        FindingSigns.Put(line, 0, 0, sight.Report.About(run.Item), sight.Glyphs, selected ? tone : null);
        foreach (var column in CableColumn.All)
            line.PutFit(column.At, 0, column.Cells, column.Show(run) is { Length: > 0 } shown ? shown : "-", tone);
    }

    private static void DrawWay(Area area, HomeRun run, Sight sight)
    {
        var y = 0;
        area.PutFit(0, y++, area.Width, $"{run.Unit.Tag}: the way from the panel", Tone.Heading);
        var drawn = area.Width >= 60 && area.Height > 8 ? RouteDrawing.Draw(area.Rows(y, area.Height - y - 3), run, sight.Glyphs) : 0;
        y += drawn;
        var way = string.Join($" {sight.Glyphs.Arrow} ", run.Legs.Select(l => $"{l.Show(LegFacts.Direction)} {l.Show(LegFacts.Length)} {l.Show(LegFacts.Place)}".Trim()));
        y = area.PutWrapped(0, y, 3, run.Legs.IsEmpty ? "No leg yet. Press l to add one, then Enter to fill it in." : $"panel {sight.Glyphs.Arrow} {way} {sight.Glyphs.Arrow} {run.Unit.Tag}", Tone.Text);
        foreach (var finding in sight.Report.About(run.Item).Where(f => f.Open).Take(3))
        {
            if (y < area.Height)
                y = UnitCard.Put(area, y, finding, sight);
        }
    }
}

/// <summary>Keys of the cables.</summary>
internal static class CablesKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<CablesScreen>("enter", "Facts", "All facts of the run and its unit, at what is still to be said of the run.", (s, sight) =>
            Turn.Open(s, SheetScreen.OfUnit(s.Current(sight)!.Unit).On($"{s.Current(sight)!.Id}/{NextOf(s.Current(sight)!).Name}"))) { Disabled = NoRun },
        new KeyAction<CablesScreen>("t", "Type a reading", "Types the test reading that is due, or mends the last one, and goes to the next run.", (s, sight) => Turn.Type(s, Reading(s, sight))) { Disabled = NoRun },
        new KeyAction<CablesScreen>("l", "One more leg", "Adds a leg to the run and opens it.", (s, sight) => new Turn(s, new Ask.Save(Core.Decisions.AddItems.Leg(s.Current(sight)!), (screen, after) =>
            ((CablesScreen)screen).Current(after) is { } run
                ? Turn.Open(screen, SheetScreen.OfUnit(run.Unit).On($"{run.Legs[^1].Id}/{LegFacts.Direction.Name}"))
                : new Turn(screen)))) { Disabled = NoRun },
        new KeyAction<CablesScreen>("p", "Cut plan", "Which run comes out of which box.", (s, sight) => Turn.Open(s, CutPlanScreen.At(sight))),
        new KeyAction<CablesScreen>("b", "New box", "Adds a box of cable on hand and opens it.", (s, sight) => Turn.Type(s, new Entry("Label on the box", "", "what is written on it, such as Box 3",
            (text, now) => Core.Decisions.AddItems.Named(now.House, ItemKind.Box, text).Then<Turn>(d => new Turn(s, new Ask.Save(d, (screen, after) =>
                Turn.Open(screen, SheetScreen.At(new OfItem(after.House.Boxes[^1].Id), after.House)))))))),
        new KeyAction<CablesScreen>("f", "Findings", "Goes to the field that mends the run's worst finding.", (s, sight) =>
            sight.Report.About(s.Current(sight)!.Item).FirstOrDefault(f => f.Open) is { } finding
                ? Turn.Open(s, SheetScreen.Mending(sight.House, finding.Found.Mends))
                : Turn.Say(s, "Nothing wrong is known of this run.")) { Disabled = NoRun },
        .. Moves.Through<CablesScreen>("run", (s, sight, by) => s with { Selected = Paging.Move(s.Selected, by, sight.House.Runs.Length) }),
    ];

    private static readonly Fact[] ToSay =
        [RunFacts.Cable, RunFacts.TailAtWindow, RunFacts.TailAtPanel, RunFacts.LabelAtWindow, RunFacts.LabelAtPanel, RunFacts.FirstLoop, RunFacts.TailFound, RunFacts.SecondLoop, RunFacts.Panel, RunFacts.Output, RunFacts.OpenVolts, RunFacts.LoadedVolts];

    /// <summary>The first fact of a run that is missing in the phase that its unit is in, or the reading of that phase where none is.</summary>
    private static Fact NextOf(HomeRun run)
    {
        var now = Progress.Current(run.Unit) ?? Phase.Handover;
        return ToSay.FirstOrDefault(f => f.Phase <= now && run.Item.Latest(f.Name)?.Stored is null) ?? (now < Phase.CloseIn ? RunFacts.FirstLoop : now < Phase.Power ? RunFacts.SecondLoop : RunFacts.LoadedVolts);
    }

    private static Entry Reading(CablesScreen s, Sight sight)
    {
        var run = s.Current(sight)!;
        var fact = run.Item.Latest(RunFacts.FirstLoop.Name)?.Stored is null ? RunFacts.FirstLoop : RunFacts.SecondLoop;
        return FactEntry.For(s, sight.House, run.Item, fact, then: (screen, after) =>
            new Turn((CablesScreen)screen with { Selected = Paging.Move(s.Selected, 1, after.House.Runs.Length) }));
    }

    private static string? NoRun(CablesScreen s, Sight sight) => s.Current(sight) is null ? "There is no home run here." : null;
}
