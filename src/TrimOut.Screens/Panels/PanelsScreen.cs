using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Panels;

/// <summary>The mechanical room: each panel's outputs as they stand on it, and the runs that wait for one.</summary>
internal sealed record PanelsScreen(int Selected, string? Carried) : IScreen, IAsked
{
    public string Title => "Panels";

    public Unit? UnitAt(Sight sight) => Current(sight)?.Run?.Unit;

    public AskedFigures? FiguresAt(Sight sight) => UnitAt(sight) is { } unit ? new AskedFigures(unit.Tag, UnitFigures.Of(unit), RunFacts.LoadedVolts)
        : Current(sight)?.Panel is { } panel ? new AskedFigures(panel.Name, PanelFigures.Of(panel), null) : null;

    public IReadOnlyList<IKeyAction> Keys => PanelsKeys.All;

    public static PanelsScreen At(Sight sight) => new(0, null);

    public PanelRow? Current(Sight sight) => PanelRows.Of(sight.House) is var rows && Selected < rows.Count ? rows[Selected] : null;

    public IScreen Fit(Sight sight) => this with
    {
        Selected = Paging.Move(Selected, 0, PanelRows.Of(sight.House).Count),
        Carried = Carried is not null && sight.House.Runs.Any(r => r.Id == Carried) ? Carried : null,
    };

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        var rows = PanelRows.Of(sight.House);
        if (sight.House.Panels.IsEmpty)
        {
            area.Put(2, 1, "There is no panel yet. Press n to add one.", Tone.Strong);
            area.PutWrapped(2, 3, 2, "A panel is mounted and connected to mains by a licensed electrician only.", Tone.Caution);
        }
        var body = area.Rows(sight.House.Panels.IsEmpty ? 6 : 0, area.Height);
        var current = Current(sight);
        if (area.Width >= 120 && (current?.Panel ?? sight.House.Panels.FirstOrDefault()) is { } seen)
        {
            PanelDrawing.Draw(body.Part(82, 1, body.Width - 83, body.Height - 2), seen, sight.Glyphs, current?.Output);
            body = body.Part(0, 0, 80, body.Height);
        }
        var top = Paging.Top(Selected, body.Height - 2);
        body.PutFit(0, 0, body.Width, "  Out  Unit     Label            Volts read           Done so far", Tone.Dim);
        for (var y = 0; y < body.Height - 2 && top + y < rows.Count; y++)
            DrawRow(body.Rows(y + 1, 1), rows[top + y], sight, top + y == Selected);
        var carried = sight.House.Runs.FirstOrDefault(r => r.Id == Carried);
        body.PutFit(0, body.Height - 1, body.Width, carried is null ? " Panel off while you land and splice: red to red, black to black." : $" In hand: {carried.Name}. Move to an output and press Space to land it.", carried is null ? Tone.Caution : Tone.Strong);
    }

    private static void DrawRow(Area line, PanelRow row, Sight sight, bool selected)
    {
        var tone = selected ? Tone.Selected : Tone.Text;
        line.PutFit(0, 0, line.Width, "", tone);
        if (row.Run is null && row.Output is null)
        {
            line.PutFit(1, 0, line.Width - 1, row.Panel is { } panel ? Heading(panel) : row.Text, selected ? tone : Tone.Heading);
            return;
        }
        if (row.Output is { } output)
            line.Put(2, 0, output.ToString("00", CultureInfo.InvariantCulture), tone);
        if (row.Run is not { } run)
        {
            line.Put(7, 0, "free", selected ? tone : Tone.Dim);
            return;
        }
        line.PutFit(7, 0, 8, run.Unit.Tag, tone);
        line.PutFit(16, 0, 16, run.Show(RunFacts.LabelAtPanel) is { Length: > 0 } label ? label : "no label", tone);
        line.PutFit(33, 0, 20, Volts(run), tone);
        line.PutFit(54, 0, line.Width - 54, DoneSoFar(run), tone);
        if (sight.Report.About(run.Item).Any(f => f.Open))
            line.Put(0, 0, sight.Glyphs.Stop, selected ? tone : Tone.Stop);
    }

    private static string Heading(Panel panel)
    {
        var connected = panel.Show(PanelFacts.ConnectedBy) is { Length: > 0 } by ? $"connected by {by}" : "not connected yet";
        var used = panel.Runs.Count().ToString(CultureInfo.InvariantCulture);
        var where = panel.Show(PanelFacts.Location) is { Length: > 0 } location ? $"{location}, " : "";
        return $"{panel.Name}: {where}{used} of {panel.Type?.Outputs?.ToString(CultureInfo.InvariantCulture) ?? "?"} outputs used, {connected}";
    }

    private static string Volts(HomeRun run) =>
        run.Item.Get(RunFacts.OpenVolts) is { } open
            ? $"{open}{(run.Item.Get(RunFacts.LoadedVolts) is { } loaded ? $" / {loaded}" : "")}"
            : "not read";

    /// <summary>What stands behind an output already, in words; empty when nothing does.</summary>
    public static string DoneSoFar(HomeRun run)
    {
        string?[] parts = [Said(run.Unit, "spliced"), Said(run.Unit, "volts-read") is null ? null : "powered", run.Unit.Hub is null ? null : "paired", Said(run.Unit, "close-limit") is null ? null : "limits"];
        return string.Join(", ", parts.OfType<string>());
    }

    private static string? Said(Unit unit, string step) => Core.Phases.StepList.Find(step) is { } s && unit.MarkOf(s) is not null ? step : null;
}

/// <summary>A row: a panel, one of its outputs, the heading of the waiting runs, or one of these.</summary>
internal sealed record PanelRow(Panel? Panel, int? Output, HomeRun? Run, string Text = "");

/// <summary>The rows of the screen.</summary>
internal static class PanelRows
{
    public static IReadOnlyList<PanelRow> Of(House house)
    {
        var rows = new List<PanelRow>();
        foreach (var panel in house.Panels)
        {
            rows.Add(new PanelRow(panel, null, null));
            var runs = panel.Runs.ToLookup(r => r.Output);
            var last = Math.Max(panel.Type?.Outputs ?? 0, runs.Max(r => r.Key) ?? 0);
            for (var output = 1; output <= last; output++)
            {
                if (!runs[output].Any())
                    rows.Add(new PanelRow(panel, output, null));
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
