using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Punch;

/// <summary>Everything to mend: findings and hand-written items, open ones first.</summary>
internal sealed record PunchScreen(int Selected, bool Closed, Phase? Only) : IFiltered, IAsked, ITable
{
    public string Title => "Punch list";

    public Unit? UnitAt(ScreenContext context) => Current(context) is { } row ? UnitOf(context.House, row.Subject) : null;

    /// <summary>Whether facts that checks wait for are listed in place of what is to be fixed.</summary>
    public bool WantsFacts { get; init; }

    public IReadOnlyList<IKeyAction> Keys => PunchKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [new(g => g.Arrow, "before an item: picked, to be waived together with others")];

    /// <summary>The findings that are picked, to be waived with one reason.</summary>
    public ImmutableHashSet<PickedFinding> Picked { get; init; } = [];

    /// <summary>
    /// What would be waived: the picked findings that are still open, those that a filter hides too; where none is picked, the one under the cursor.
    /// </summary>
    public IReadOnlyList<Finding> ToWaive(ScreenContext context)
    {
        var picked = context.Report.Findings.Where(f => f.Open && Picked.Contains(PickedFinding.Of(f))).ToList();
        return picked.Count > 0 ? picked : Current(context)?.Finding is { } finding ? [finding] : [];
    }

    public static PunchScreen At(ScreenContext context) => new(0, false, null);

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        [["State", "Of", "Phase", "What"],
            .. PunchRows.Of(this, context).Select(r => (IReadOnlyList<string>)[r.State, context.House.NameOf(r.Subject), r.Phase?.Full() ?? "", r.Text])];

    /// <summary>The list of facts that checks wait for.</summary>
    public static PunchScreen OfMissingFacts(ScreenContext context) => At(context) with { WantsFacts = true };

    /// <summary>On what one laptop removed and another worked on.</summary>
    public static PunchScreen OnRemoved(ScreenContext context, string item)
    {
        var all = At(context);
        var at = PunchRows.Of(all, context).ToList()
            .FindIndex(r => r.Subject.Id == item && r.Finding?.Found.Mends.Field == Item.RemovedField);
        return all with { Selected = Math.Max(0, at) };
    }

    public string Search { get; init; } = "";

    public (int Shown, int All) Count(ScreenContext context) => (PunchRows.Of(this, context).Count, PunchRows.Of(this with { Search = "" }, context).Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(PunchRows.Of(this, context), Selected, PunchRows.Of(to, context), r => (r.Subject.Id, r.Text)) };
    }

    public PunchRow? Current(ScreenContext context) => PunchRows.Of(this, context) is var rows && Selected < rows.Count ? rows[Selected] : null;

    public IScreen Fit(ScreenContext context) => this with { Selected = Paging.Move(Selected, 0, PunchRows.Of(this, context).Count) };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var (list, card) = Wide.Split(area, context.Glyphs);
        var rows = PunchRows.Of(this, context);
        DrawList(list, rows, context);
        if (card is { } beside && Selected < rows.Count)
            DrawSubject(beside, rows[Selected], context);
    }

    /// <summary>What a row is about: the unit with the drawing that shows its field, the panel with its outputs, the remote with its groups.</summary>
    private static void DrawSubject(Area area, PunchRow row, ScreenContext context)
    {
        var field = row.Finding?.Found.Mends ?? row.FillIn;
        var fact = field is { } at && context.House.Find(at.Item) is { } item ? FactTable.Find(item.Kind, at.Field) : null;
        if (UnitOf(context.House, row.Subject) is { } unit)
            UnitCard.Draw(area, unit, context, Pictures.For(fact), saidAlready: row.Finding is { } said ? [said] : []);
        else if (context.House.FindPanel(row.Subject.Id) is { } panel)
            PanelDrawing.Draw(area, panel, context.Glyphs, null, run => FindingSigns.AnyStop(UnitCard.Around(context, run.Unit)));
        else if (context.House.FindRemote(row.Subject.Id) is { } remote)
            RemoteCard.Draw(area, remote, context);
        else if (FactTable.IsKit(row.Subject.Kind))
            PartCard.Draw(area, row.Subject, context);
        else
            area.PutWrapped(0, 0, 3, context.House.NameOf(row.Subject), Tone.Strong);
    }

    private void DrawList(Area area, IReadOnlyList<PunchRow> rows, ScreenContext context)
    {
        var open = context.Report.Findings.Count(f => f.Open) + context.House.PunchItems.Count(p => p.Open);
        var only = Only is { } p ? $"; only {p.Full()}" : "";
        if (WantsFacts)
        {
            var waits = WaitingLine.Of(context.Report, Only).Replace(" (m)", "", StringComparison.Ordinal);
            area.PutFit(0, 0, area.Width, $" {waits}; m goes back", Tone.Heading);
        }
        else
            DrawSums(area.Rows(0, 1), open, only, context);
        if (rows.Count == 0)
        {
            if (Search.Length > 0)
                return;
            var waiting = !WantsFacts && !context.Report.Waiting.None;
            area.PutWrapped(2, 2, 3, waiting ? $"Nothing is open here yet. {context.Report.Waiting}: m lists them." : "Nothing is open here.",
                waiting ? Tone.Caution : context.Good);
            return;
        }
        var detail = Math.Min(9, area.Height / 2);
        var list = area.Rows(1, area.Height - 1 - detail);
        var names = Math.Clamp(rows.Max(r => TextWidth.Of(context.House.NameOf(r.Subject))), 4, area.Width >= 100 ? 24 : 11);
        var phases = rows.Max(r => TextWidth.Of(r.Phase?.Full() ?? ""));
        foreach (var (y, at) in Paging.Rows(list, rows.Count, Selected, at => this with { Selected = at }))
        {
            var row = rows[at];
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            list.PutFit(0, y, list.Width, "", tone);
            if (row.Finding is { } finding && Picked.Contains(PickedFinding.Of(finding)))
                list.Put(0, y, context.Glyphs.Arrow, tone);
            list.Put(1, y, row.State, at == Selected && row.Tone != Tone.Stop ? tone : row.Tone);
            list.PutFit(9, y, names, context.House.NameOf(row.Subject), tone);
            list.PutFit(10 + names, y, phases, row.Phase?.Full() ?? "", tone);
            list.PutFit(11 + names + phases, y, list.Width - 11 - names - phases, row.Text, tone);
        }
        if (Selected < rows.Count)
            DrawDetail(area.Rows(area.Height - detail, detail), rows[Selected], context);
    }

    private void DrawSums(Area line, int open, string only, ScreenContext context)
    {
        if (context.Report.Findings.Count(f => f.Open && Picked.Contains(PickedFinding.Of(f))) is > 0 and var picked)
        {
            var them = picked == 1 ? "it" : "them with one reason";
            line.PutFit(0, 0, line.Width, $" {NumberText.Counted(picked, "finding")} picked. a waives {them}; v leaves one out or takes one in.", Tone.Strong);
            return;
        }
        var x = line.Put(0, 0, string.Create(CultureInfo.InvariantCulture, $" {open} open, "), Tone.Heading);
        var stops = context.Stops;
        x = stops == 0 ? line.Put(x, 0, "none of them a stop", Tone.Heading)
            : line.Put(x, 0, $"{context.Glyphs.Stop} {NumberText.Counted(stops, "stop")}", Tone.Stop);
        line.PutFit(x, 0, line.Width - x, $"; {context.Report.Waiting} (m lists them){only}{(Closed ? "; with waived and done" : "")}", Tone.Heading);
    }

    private static Unit? UnitOf(House house, Item item) => item.Kind switch
    {
        ItemKind.Unit => house.FindUnit(item.Id),
        ItemKind.Window => house.FindWindow(item.Id)?.Units.FirstOrDefault(),
        ItemKind.Run or ItemKind.Leg => house.Find(item.Under) is { } above ? UnitOf(house, above) : null,
        _ => null,
    };

    private static void DrawDetail(Area area, PunchRow row, ScreenContext context)
    {
        for (var x = 0; x < area.Width; x++)
            area.Put(x, 0, context.Glyphs.Across, Tone.Dim);
        var y = area.PutWrapped(1, 1, 3, row.Text, Tone.Strong);
        if (row.FillIn is not null)
        {
            area.PutWrapped(1, y, 2, row.State == PunchRows.Unchecked
                ? "Enter goes to the value, to be checked against the maker's sheet. Until then this is no pass."
                : "Enter goes to the field. A missing detail is never a pass.", Tone.Note);
            return;
        }
        if (row.Finding is not { } finding)
        {
            area.PutWrapped(1, y, 2, $"Written by hand about {context.House.NameOf(row.Subject)}.", Tone.Dim);
            return;
        }
        y = area.PutWrapped(1, y, 2, finding.Found.Mend.In(context.House), Tone.Note);
        if (finding.Waiver is { } waiver)
            y = area.PutWrapped(1, y, 2, $"Waived by {waiver.Initials}: {waiver.Reason}", Tone.Note);
        if (context.Report.WorkingOf(finding) is { } working)
            y = area.PutWrapped(1, y, 2, $"{working.Formula}: {string.Join(", ", working.Inputs.Select(i => $"{i.Name} {i.Value}"))}", Tone.Text);
        area.PutWrapped(1, y, 2, $"{finding.Check.Id}: {finding.Check.Source.Formula} ({finding.Check.Source.Title})", Tone.Dim);
    }
}

/// <summary>Which finding was picked; other figures of it are another one.</summary>
internal readonly record struct PickedFinding(string Check, string Subject, string Figures)
{
    public static PickedFinding Of(Finding finding) => new(finding.Check.Id, finding.Subject.Id, finding.Found.Message.Figures);
}

/// <summary>A finding or a hand-written item.</summary>
internal sealed record PunchRow(Item Subject, Phase? Phase, string State, Tone Tone, string Text, Finding? Finding, PunchItem? Item, FieldRef? FillIn = null);

/// <summary>The rows of the list.</summary>
internal static class PunchRows
{
    /// <summary>What stands before a value that nobody checked, among what checks wait for.</summary>
    public const string Unchecked = "unread";

    public static IReadOnlyList<PunchRow> Of(PunchScreen screen, ScreenContext context)
    {
        if (screen.WantsFacts)
        {
            // What waits for a later phase is no work yet; of the rest a value that a stop hides behind is looked at before a blank.
            var now = context.Head.Next?.Step.Phase;
            return [.. Unread(context).Concat(Wanted(context)).Where(r => Fits(r, screen, context)).OrderBy(r => r.Phase > now)];
        }
        var findings = context.Report.Findings.Where(f => f.Open || screen.Closed).Select(f => new PunchRow(f.Subject, f.Check.Phase,
            f.Open ? UnitCard.WordOf(f.Check.Severity) : "waived", f.Open ? UnitCard.ToneOf(f.Check.Severity) : Tone.Dim, context.Report.Said(f),
                f, null));
        var written = context.House.PunchItems.Where(p => p.Open || screen.Closed).Select(p => new PunchRow(p.About ?? p.Item, p.Phase,
            p.Open ? "to fix" : "done", p.Open ? Tone.Caution : Tone.Dim, p.Name, null, p));
        return [.. findings.Concat(written).Where(r => Fits(r, screen, context)).OrderBy(r => r.State is "waived" or "done")
            .ThenBy(r => r.State == "STOP" ? 0 : r.State == "to fix" ? 1 : 2)];
    }

    private static bool Fits(PunchRow row, PunchScreen screen, ScreenContext context) => (screen.Only is null || row.Phase == screen.Only)
        && (screen.Search.Length == 0 || Filtering.Fits(
            $"{row.State} {context.House.NameOf(row.Subject)} {row.Phase?.Full()} {row.Text} {row.Finding?.Check.Id}", screen.Search));

    /// <summary>Each fact that checks wait for, once, with the checks that wait: the earliest phase first.</summary>
    private static IEnumerable<PunchRow> Wanted(ScreenContext context) => context.Report.Missing
        .GroupBy(m => (Field: m.NotChecked.FillIn ?? new FieldRef(m.Subject.Id, ""), m.NotChecked.Missing))
        .OrderBy(g => g.Min(m => m.Check.Phase))
        .Select(g => new PunchRow(context.House.Find(g.Key.Field.Item) ?? g.First().Subject, g.Min(m => m.Check.Phase), "blank", Tone.Note,
            $"Missing: {g.Key.Missing.In(context.House)}. Waiting: {string.Join(", ", g.Select(m => m.Check.Title).Distinct())}.", null, null, g.Key.Field));

    /// <summary>Each value of a sheet that nobody checked and that checks pass by, once, with these checks: none of them is a pass yet.</summary>
    private static IEnumerable<PunchRow> Unread(ScreenContext context) => context.Report.Unread
        .SelectMany(u => u.Values, (u, value) => (u.Check, u.Subject, Value: value))
        .GroupBy(u => u.Value)
        .OrderBy(g => g.Min(u => u.Check.Phase))
        .Select(g => (Part: context.House.Find(g.Key.Item)!, Passing: g))
        .Select(g => new PunchRow(g.Part, g.Passing.Min(u => u.Check.Phase), Unchecked, Tone.Caution,
            $"Passes by a value nobody checked: {LabelOf(g.Part, g.Passing.Key, context)}. {NumberText.Counted(g.Passing.Count(), "check")} of "
                + $"{Few([.. g.Passing.Select(u => context.House.NameOf(u.Subject)).Distinct()])}: "
                + string.Join("; ", g.Passing.Select(u => u.Check.Title).Distinct()) + ".",
            null, null, g.Passing.Key));

    private static string LabelOf(Item part, FieldRef value, ScreenContext context) =>
        FactTable.Find(part.Kind, value.Field) is { } fact ? $"{fact.Label} {fact.ShowOf(part, context.House)}" : value.Field;

    private static string Few(List<string> names) => names.Count <= MostNames ? string.Join(", ", names)
        : $"{string.Join(", ", names.Take(MostNames))} and {NumberText.Plain(names.Count - MostNames)} more";

    private const int MostNames = 3;
}
