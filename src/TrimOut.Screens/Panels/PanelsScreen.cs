using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Panels;

/// <summary>The mechanical room: each panel's outputs as they stand on it, and the runs that wait for one.</summary>
internal sealed record PanelsScreen(int Selected, string? Carried) : IFiltered, IAsked, ITable
{
    public string Title => "Panels";

    public Unit? UnitAt(ScreenContext context) => Current(context)?.Run?.Unit;

    public AskedFigures? FiguresAt(ScreenContext context) =>
        UnitAt(context) is { } unit ? new AskedFigures(unit.Tag, UnitFigures.Of(unit), RunFacts.LoadedVolts)
        : Current(context)?.Panel is { } panel ? new AskedFigures(panel.Name, PanelFigures.Of(panel), null) : null;

    private static readonly string StopWord = UnitCard.WordOf(Severity.Stop);

    /// <summary>Lines for what is wrong with the row under the cursor.</summary>
    private const int MostAbout = 3;

    public IReadOnlyList<IKeyAction> Keys => PanelsKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [.. PanelColumns.All.Select(c => c.Sign), .. FindingSigns.Counting, PanelDrawing.Used, PanelDrawing.Free];

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        [["Panel", .. PanelColumns.All.Select(c => c.Sign.Drawn(context.Glyphs))],
            .. Rows(context.House).Where(r => !r.IsHeading).Select(r => (IReadOnlyList<string>)[r.Panel?.Name ?? "",
                r.Output?.ToString("00", CultureInfo.InvariantCulture) ?? "",
                r.Run?.Unit.Tag ?? r.NotWanted ?? "free", r.Run?.Show(RunFacts.LabelAtPanel) ?? "",
                r.Run?.Show(RunFacts.OpenVolts) ?? "", r.Run?.Show(RunFacts.LoadedVolts) ?? "", r.Run is null ? "" : DoneSoFar(r.Run)])];

    public static PanelsScreen At(ScreenContext context) => new(0, null);

    public string Search { get; init; } = "";

    /// <summary>The rows that are shown: runs that fit, below their panels; free outputs only where all is shown, or their panel fits.</summary>
    public IReadOnlyList<PanelRow> Rows(House house)
    {
        var all = PanelRows.Of(house);
        if (Search.Length == 0)
            return all;
        var fit = all.Where(r => !r.IsHeading && Filtering.Fits(TextOf(r), Search)).ToHashSet();
        return [.. all.Where(r => fit.Contains(r) || (r.IsHeading && fit.Any(f => f.Panel?.Id == r.Panel?.Id && (f.Output is null) == (r.Panel is null))))];
    }

    public (int Shown, int All) Count(ScreenContext context) =>
        (Rows(context.House).Count(r => !r.IsHeading), PanelRows.Of(context.House).Count(r => !r.IsHeading));

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        var rows = to.Rows(context.House);
        var at = Filtering.Keep(Rows(context.House), Selected, rows, r => (r.Panel?.Id, r.Output, r.Run?.Id));
        return to with { Selected = at > 0 ? at : Math.Max(0, rows.ToList().FindIndex(r => !r.IsHeading)) };
    }

    private static string TextOf(PanelRow row) => string.Create(CultureInfo.InvariantCulture,
        $"{row.Panel?.Name} {row.Output} {row.Run?.Unit.Tag} {row.Run?.Unit.Window.Room?.FullName} "
            + $"{string.Join(' ', row.Run?.Labels ?? [])} {(row.Run is null ? row.NotWanted ?? "free" : "")}");

    public PanelRow? Current(ScreenContext context) => Rows(context.House) is var rows && Selected < rows.Count ? rows[Selected] : null;

    public IScreen Fit(ScreenContext context) => this with
    {
        Selected = PanelRows.Move(Rows(context.House), Selected, 0),
        Carried = Carried is not null && context.House.Runs.Any(r => r.Id == Carried) ? Carried : null,
    };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var rows = Rows(context.House);
        if (context.House.Panels.IsEmpty)
        {
            area.Put(2, 1, "There is no panel yet. Press n to add one.", Tone.Strong);
            area.PutWrapped(2, 3, 2, "A panel is mounted and connected to mains by a licensed electrician only.", Tone.Caution);
        }
        var body = area.Rows(context.House.Panels.IsEmpty ? 6 : 0, area.Height);
        var current = Current(context);
        if (area.Width >= 120 && (current?.Panel ?? context.House.Panels.FirstOrDefault()) is { } seen)
        {
            var list = body.Width - PanelDrawing.Width - 2;
            var drawn = PanelDrawing.Draw(body.Part(list + 1, 1, PanelDrawing.Width, body.Height - 2), seen, context.Glyphs, current?.Output,
                run => FindingSigns.AnyStop(UnitCard.Around(context, run.Unit)));
            if (current?.Run is { } under && body.Height - drawn > 3 * UnitCard.LeastDrawing / 2)
                UnitCard.Draw(body.Part(list + 1, drawn + 2, PanelDrawing.Width, body.Height - drawn - 2), under.Unit, context);
            body = body.Part(0, 0, list, body.Height);
        }
        var said = current is null ? "" : About(current, context);
        var about = TextWidth.Wrap(said, body.Width - 2, MostAbout, out var whole);
        if (whole)
            body.Frame.Shown(said);
        else
            body.Frame.Cut(said, string.Join(' ', about), Tone.Strong);
        var table = body.Rows(0, body.Height - 1 - about.Count);
        foreach (var column in PanelColumns.All)
        {
            if (column.IsFigure)
                table.PutFigure(column.At, 0, column.Cells, column.Sign.Drawn(context.Glyphs), Tone.Dim);
            else
                table.PutFit(column.At, 0, Math.Min(column.Cells, table.Width - column.At), column.Sign.Drawn(context.Glyphs), Tone.Dim);
        }
        var lines = table.Rows(1, table.Height - 1);
        var shown = Paging.Rows(lines, rows.Count, Selected,
            at => rows[at].CanBeChosen || rows[at].Output is not null ? this with { Selected = at } : null);
        var open = Decimals.Alike([.. shown.Select(r => Volts(rows[r.At], RunFacts.OpenVolts))]);
        var loaded = Decimals.Alike([.. shown.Select(r => Volts(rows[r.At], RunFacts.LoadedVolts))]);
        foreach (var (row, (y, at)) in shown.Index())
            DrawRow(lines.Rows(y, 1), rows[at], open[row], loaded[row], context, at == Selected);
        for (var at = 0; at < about.Count; at++)
        {
            body.PutFit(0, table.Height + at, body.Width, " " + about[at], Tone.Strong);
            for (var stop = about[at].IndexOf(StopWord, StringComparison.Ordinal); stop >= 0;
                stop = about[at].IndexOf(StopWord, stop + 1, StringComparison.Ordinal))
                body.Put(1 + TextWidth.Of(about[at][..stop]), table.Height + at, StopWord, Tone.Stop);
        }
        var carried = context.House.Runs.FirstOrDefault(r => r.Id == Carried);
        var (joined, by) = UncheckedValues.Read(context.House, house =>
            CableType.Joined(Cable(current?.Run is { } at ? house.FindUnit(at.Unit.Id)?.Run : null, house)));
        var (cue, tone) = carried is null
            ? (UncheckedValues.Marked($" Panel off to land and splice: {joined}.", by.Count > 0), Tone.Caution)
            : ($" In hand: {carried.Name}. Move to an output and press Space to land it.", Tone.Strong);
        body.PutFit(0, body.Height - 1, body.Width, cue, tone);
    }

    /// <summary>The cable of the row under the cursor; else the one that all runs of the house have.</summary>
    private static CableType? Cable(HomeRun? run, House house) => run?.Cable
        ?? (house.Runs.Select(r => r.Cable).DistinctBy(c => c?.Id).ToList() is [{ } only] ? only : null);

    /// <summary>What is wrong with the row under the cursor, in the sentences of its findings; of a panel, what it is as well.</summary>
    private static string About(PanelRow row, ScreenContext context)
    {
        var findings = row.Run is { } run ? UnitCard.Around(context, run.Unit).OrderBy(f => f.Check.Severity).ThenBy(f => f.Subject.Id != run.Id)
            : row.Panel is { } on ? context.Report.About(on) : [];
        var said = findings.Where(f => f.Open).Select(f => $"{UnitCard.WordOf(f.Check.Severity)} {context.Report.Said(f)}");
        return string.Join(" ", row is { Panel: { } panel, Output: null } ? [Heading(panel) + ".", .. said] : said);
    }

    private static string Volts(PanelRow row, Fact<Voltage> fact) => row.Run?.Item.Get(fact) is { } volts ? volts.ToString() : "-";

    private static void DrawRow(Area line, PanelRow row, string open, string loaded, ScreenContext context, bool selected)
    {
        var tone = selected ? Tone.Selected : Tone.Text;
        line.PutFit(0, 0, line.Width, "", tone);
        if (row.IsHeading)
        {
            var wrong = row.Panel is { } of ? UnitCard.Around(context, of).ToList() : [];
            line.PutFit(4, 0, line.Width - 4, row.Panel is { } panel ? Heading(panel) : row.Text, selected ? tone : Tone.Heading);
            if (row.Panel is { } shown && PanelUse.Of(shown) is var use && use.InWords != use.Fits && FindingSigns.AnyStop(wrong))
                line.Put(4 + TextWidth.Of(shown.Name) + 2, 0, use.InWords, Tone.Stop);
            FindingSigns.PutCount(line, 0, 0, wrong, context.Glyphs, selected ? tone : null);
            return;
        }
        if (row.Output is { } output)
            line.Put(PanelColumns.Output.At, 0, output.ToString("00", CultureInfo.InvariantCulture), tone);
        if (row.Run is not { } run)
        {
            var notWanted = row.NotWanted;
            if (notWanted is null)
                line.Put(PanelColumns.Unit.At, 0, "free", selected ? tone : Tone.Dim);
            else
                line.PutFit(PanelColumns.Unit.At, 0, line.Width - PanelColumns.Unit.At, $"{notWanted}: landed, not wanted, live",
                    selected ? tone : Tone.Caution);
            return;
        }
        Put(PanelColumns.Unit, run.Unit.Tag);
        Put(PanelColumns.Label, run.Show(RunFacts.LabelAtPanel) is { Length: > 0 } label ? label : "no label");
        Put(PanelColumns.Open, open);
        Put(PanelColumns.Loaded, loaded);
        Put(PanelColumns.Done, DoneSoFar(run));
        FindingSigns.PutCount(line, 0, 0, UnitCard.Around(context, run.Unit), context.Glyphs, selected ? tone : null);

        void Put(PanelColumn column, string text)
        {
            if (column.IsFigure)
                line.PutFigure(column.At, 0, column.Cells, text, tone);
            else
                line.PutFit(column.At, 0, Math.Min(column.Cells, line.Width - column.At), text, tone);
        }
    }

    private static string Heading(Panel panel)
    {
        var where = panel.Show(PanelFacts.Location) is { Length: > 0 } location ? $", {location}" : "";
        return $"{panel.Name}: {PanelUse.Of(panel).InWords}{where}, {Connected(panel)}";
    }

    private static string Connected(Panel panel) => panel.Show(PanelFacts.ConnectedBy) is { Length: > 0 } by ? $"connected by {by}" : "not connected yet";

    /// <summary>What stands behind an output already, in words; empty when nothing does.</summary>
    public static string DoneSoFar(HomeRun run)
    {
        string?[] parts = [Said(run.Unit, "spliced"), Said(run.Unit, "volts-read") is null ? null : "powered", run.Unit.Hub is null ? null : "paired",
            Said(run.Unit, "close-limit") is null ? null : "limits"];
        return string.Join(", ", parts.OfType<string>());
    }

    private static string? Said(Unit unit, string step) => Core.Phases.StepList.Find(step) is { } s && unit.MarkOf(s) is not null ? step : null;
}

/// <summary>A row: a panel, one of its outputs, the heading of the waiting runs, or one of these.</summary>
internal sealed record PanelRow(Panel? Panel, int? Output, HomeRun? Run, string Text = "")
{
    /// <summary>The run that is landed there though its unit is said to need none; null where there is none.</summary>
    public string? NotWanted { get; init; }

    /// <summary>Whether it names a panel or the runs below it.</summary>
    public bool IsHeading => Run is null && Output is null;

    /// <summary>Whether the cursor stops there: not on words above the waiting runs.</summary>
    public bool CanBeChosen => Panel is not null || Run is not null;
}

/// <summary>The rows of the screen.</summary>
internal static class PanelRows
{
    /// <summary>So many rows on, to one that the cursor stops at.</summary>
    public static int Move(IReadOnlyList<PanelRow> rows, int selected, int by)
    {
        var to = Paging.Move(selected, by, rows.Count);
        return to >= rows.Count || rows[to].CanBeChosen ? to : Paging.Move(to, by < 0 ? -1 : 1, rows.Count);
    }

    public static IReadOnlyList<PanelRow> Of(House house)
    {
        var rows = new List<PanelRow>();
        foreach (var panel in house.Panels)
        {
            rows.Add(new PanelRow(panel, null, null));
            var (runs, notWanted) = (panel.Runs.ToLookup(r => r.Output), panel.NotWanted.ToLookup(n => n.Output, n => house.NameOf(n.Run)));
            foreach (var output in panel.OutputNumbers)
            {
                if (!runs[output].Any() || notWanted[output].Any())
                    rows.Add(new PanelRow(panel, output, null) { NotWanted = notWanted[output].FirstOrDefault() });
                rows.AddRange(runs[output].Select(r => new PanelRow(panel, output, r)));
            }
        }
        var waiting = house.Runs.Where(r => r.BranchesOff is null && (r.Panel is null || r.Output is null)).ToList();
        if (waiting.Count > 0)
        {
            rows.Add(new PanelRow(null, null, null, $"Waiting for an output: {waiting.Count.ToString(CultureInfo.InvariantCulture)}"));
            rows.AddRange(waiting.Select(r => new PanelRow(null, null, r)));
        }
        return rows;
    }
}
