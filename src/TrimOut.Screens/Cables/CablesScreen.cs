using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
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
        list.PutFit(0, 0, list.Width, "  Unit    Cable     Legs       With tails  Table     First     Second", Tone.Dim);
        var top = Paging.Top(Selected, height - 1);
        for (var y = 0; y < height - 1 && top + y < runs.Length; y++)
            DrawRow(list.Rows(y + 1, 1), runs[top + y], sight, top + y == Selected);
        if (Current(sight) is { } run)
            DrawWay(area.Rows(height, area.Height - height), run, sight);
    }

    private static void DrawRow(Area line, HomeRun run, Sight sight, bool selected)
    {
        var (tone, units) = (selected ? Tone.Selected : Tone.Text, sight.House.DisplayUnits);
        line.PutFit(0, 0, line.Width, "", tone);
        if (sight.Report.About(run.Item).Any(f => f.Open))
            line.Put(0, 0, sight.Glyphs.Stop, selected ? tone : Tone.Stop);
        line.PutFit(2, 0, 7, run.Unit.Tag, tone);
        line.PutFit(10, 0, 9, run.Cable?.Name ?? "-", tone);
        line.PutFit(20, 0, 10, Run(run.LegsLength, units), tone);
        line.PutFit(31, 0, 11, Run(run.OneWay, units), tone);
        line.PutFit(43, 0, 9, Run(run.Cable?.LongestRun, units), tone);
        line.PutFit(53, 0, 9, run.Show(RunFacts.FirstLoop) is { Length: > 0 } first ? first : "-", tone);
        line.PutFit(63, 0, 9, run.Show(RunFacts.SecondLoop) is { Length: > 0 } second ? second : "-", tone);
        line.PutFit(73, 0, line.Width - 73, run is { Panel: { } panel, Output: { } output } ? string.Create(CultureInfo.InvariantCulture, $"{panel.Name}-{output}") : "", tone);
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

    private static string Run(Length? length, DisplayUnits units) => length is { } known ? known.ShowRounded(units, LengthScale.Run) : "-";
}

/// <summary>Keys of the cables.</summary>
internal static class CablesKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<CablesScreen>("enter", "Facts", "All facts of the run and its unit, at the rough-in.", (s, sight) =>
            Turn.Open(s, SheetScreen.OfUnit(s.Current(sight)!.Unit).On($"{s.Current(sight)!.Id}/{RunFacts.Cable.Name}"))) { Disabled = NoRun },
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

    private static string? NoRun(CablesScreen s, Sight sight) => s.Current(sight) is null ? "There is no home run here." : null;
}
