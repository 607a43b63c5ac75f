using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Sheets;

/// <summary>All details of one thing, edited in place.</summary>
internal sealed record SheetScreen(SheetOf Of, int Selected, string Title, IReadOnlyList<SheetRow> Rows) : IFiltered, IAsked, ITable
{
    public Unit? UnitAt(ScreenContext context) => Of is OfUnit of ? context.House.FindUnit(of.UnitId) : null;

    public AskedFigures? FiguresAt(ScreenContext context) => UnitAt(context) is { } unit ? new AskedFigures(unit.Tag, UnitFigures.Of(unit), Current?.Fact)
        : Of is OfItem item && context.House.FindPanel(item.ItemId) is { } panel ? new AskedFigures(panel.Name, PanelFigures.Of(panel), null) : null;

    public IReadOnlyList<IKeyAction> Keys => SheetKeys.All;

    private static readonly Sign NoValue = new(g => g.Nothing, "no value yet");

    private static readonly Sign NotHeld = new(_ => "?", "a value of the kit that nobody checked against the maker's sheet yet");

    private static readonly Sign Begun = new(_ => "=", "a figure of the house that the program began with, and nobody typed");

    public IReadOnlyList<Sign> Signs { get; } = [.. FindingSigns.All, NoValue, NotHeld, Begun, .. DrawingSigns.Window, .. SunDrawing.Signs];

    /// <summary>A card or a picture beside the rows needs so much.</summary>
    private const int LeastPicture = 40;

    public string? TypesBy(ScreenContext context) => Current is null ? null : "enter";

    public bool WordsType(ScreenContext context) => Current is not null;

    public string Search { get; init; } = "";

    public (int Shown, int All) Count(ScreenContext context) => (Rows.Count(r => r.IsFact), Of.Rows(context.House).Count(r => r.IsFact));

    /// <summary>With only the details whose label has the words, under their headings; where no label has them, those under a heading that has.</summary>
    public IScreen Searching(string search, ScreenContext context)
    {
        var rows = Fitting(Of.Rows(context.House), search);
        var to = this with { Search = search, Rows = rows, Selected = FirstFact(rows) };
        return Current is { } row ? to.On(row.Place) : to;
    }

    /// <summary>A sheet is long: what was looked for is gone to, and all the others are there again.</summary>
    public IScreen Found(ScreenContext context) => Searching("", context);

    private static IReadOnlyList<SheetRow> Fitting(IReadOnlyList<SheetRow> all, string search)
    {
        if (search.Length == 0)
            return all;
        var heading = "";
        var rows = all.Select(r => (Row: r, Heading: heading = r.IsFact ? heading : r.Heading)).Where(r => r.Row.IsFact).ToList();
        var fit = rows.FindAll(r => Filtering.Fits(r.Row.Label, search));
        if (fit.Count == 0)
            fit = rows.FindAll(r => Filtering.Fits($"{r.Heading} {r.Row.Label}", search));
        return [.. fit.GroupBy(r => r.Heading, r => r.Row).SelectMany(g => g.Key.Length == 0 ? g : g.Prepend(SheetRow.Head(g.Key)))];
    }

    public SheetRow? Current => Selected < Rows.Count && Rows[Selected].IsFact ? Rows[Selected] : null;

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        Rows.Select(r => (IReadOnlyList<string>)(r.IsFact ? [r.Label, r.Shown(context.House)] : [r.Heading]));

    public static SheetScreen At(SheetOf of, House house)
    {
        var rows = of.Rows(house);
        return new SheetScreen(of, FirstFact(rows), of.Title(house), rows);
    }

    public static SheetScreen OfUnit(Unit unit) => At(new OfUnit(unit.Id), unit.House);

    public static SheetScreen OfHouse(House house) => At(new OfItem(House.RootId), house);

    /// <summary>The sheet with the field that fixes a finding under the cursor.</summary>
    public static SheetScreen Mending(House house, FieldRef field)
    {
        var screen = house.Find(field.Item) is { } item ? At(SheetOf.Holding(house, item), house) : OfHouse(house);
        return screen.On($"{field.Item}/{field.Field}");
    }

    /// <summary>
    /// The sheet of what a written punch item is about: at the detail that its words name, else at the first of its phase, one without a value before others.
    /// What is about nothing in particular, and names no detail, opens itself.
    /// </summary>
    public static SheetScreen OfWritten(PunchItem written)
    {
        var house = written.House;
        var itself = At(new OfItem(written.Id), house);
        if (written.About is not { Removed: false } about)
            return itself;
        var sheet = At(SheetOf.Holding(house, about), house);
        var facts = Enumerable.Range(0, sheet.Rows.Count).Where(at => sheet.Rows[at].IsFact).ToList();
        var named = facts.Where(at => Names(written.Name, sheet.Rows[at].Fact!.Label)).OrderByDescending(at => sheet.Rows[at].Fact!.Label.Length).ToList();
        var ofPhase = facts.Where(at => sheet.Rows[at].Fact!.Phase == written.Phase).OrderBy(at => sheet.Rows[at].Shown(house).Length > 0).ToList();
        return named is [var best, ..] ? sheet with { Selected = best }
            : about.Kind == ItemKind.House ? itself
            : ofPhase is [var first, ..] ? sheet with { Selected = first } : sheet;
    }

    private static bool Names(string text, string label) => text.IndexOf(label, StringComparison.OrdinalIgnoreCase) is >= 0 and var at
        && (at == 0 || !char.IsLetter(text[at - 1])) && (at + label.Length == text.Length || !char.IsLetter(text[at + label.Length]));

    /// <summary>With the cursor on a place, or where it was when that place is not here.</summary>
    public SheetScreen On(string place)
    {
        var at = Rows.ToList().FindIndex(r => r.IsFact && r.Place == place);
        return at < 0 ? this : this with { Selected = at };
    }

    public IScreen Fit(ScreenContext context)
    {
        var place = Current?.Place;
        var fresh = At(Of.Still(context.House), context.House);
        fresh = fresh with { Search = Search, Rows = Fitting(fresh.Rows, Search) };
        fresh = fresh with { Selected = Math.Clamp(Selected, 0, Math.Max(0, fresh.Rows.Count - 1)) };
        return place is null ? fresh : fresh.On(place);
    }

    /// <summary>So many rows on, to a fact there or the nearest one that way; the first or the last one where there is none.</summary>
    public SheetScreen Move(int by)
    {
        var facts = Enumerable.Range(0, Rows.Count).Where(at => Rows[at].IsFact).ToList();
        if (facts.Count == 0)
            return this;
        var to = Selected + by;
        return this with { Selected = by < 0 ? facts.LastOrDefault(at => at <= to, facts[0]) : facts.FirstOrDefault(at => at >= to, facts[^1]) };
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        if (Rows.Count == 0 && Search.Length > 0)
            return;
        if (Rows.Count == 0)
        {
            area.Put(2, 1, "This is no longer in the house. Esc goes back.", Tone.Strong);
            return;
        }
        // While one types that the window is left out its unit is not in the house that is shown.
        var rows = Fitting(Of.Rows(context.House), Search) is { Count: > 0 } now ? now : Rows;
        var split = Of is OfUnit ? Math.Clamp(area.Width * 11 / 20, 40, 66) : Math.Clamp(area.Width * 13 / 20, 52, 90);
        DrawRows(area.Part(0, 0, split, area.Height), rows, context, typing);
        var side = area.Part(split + 1, 0, area.Width - split - 1, area.Height);
        var unit = Of is OfUnit of ? context.House.FindUnit(of.UnitId) : null;
        var (about, said) = DrawAbout(unit is null ? side : side.Rows(0, side.Height - UnitCard.LeastDrawing - 1), context, split - LabelCells(split) - 4);
        if (unit is null)
        {
            DrawItem(side.Rows(about + 1, side.Height - about - 1), context);
            return;
        }
        var card = side.Rows(about, side.Height - about);
        var named = card.Height > 20;
        UnitCard.Draw(named ? card.Rows(1, card.Height - 1) : card, unit, context, Pictures.For(Current?.Fact), named, said);
    }

    /// <summary>Where there is room: the panel with its door open, the remote with its groups, the part with what waits for it.</summary>
    private void DrawItem(Area area, ScreenContext context)
    {
        if (area.Width < LeastPicture || area.Height < UnitCard.LeastDrawing || Of is not OfItem of || context.House.Find(of.ItemId) is not { } item)
            return;
        if (context.House.FindPanel(item.Id) is { } panel)
            PanelDrawing.Draw(area, panel, context.Glyphs, null, run => FindingSigns.AnyStop(UnitCard.Around(context, run.Unit)));
        else if (context.House.FindRemote(item.Id) is { } remote)
            RemoteCard.Draw(area, remote, context);
        else if (FactTable.IsKit(item.Kind))
        {
            var y = context.Saved is null ? 0 : area.PutWrapped(0, 0, 1, "Once Enter has taken it:", Tone.Note);
            PartCard.Draw(area.Rows(y, area.Height - y), item, context);
        }
        else if (item.Kind == ItemKind.House)
            HouseCard.Draw(area, context);
    }

    private void DrawRows(Area area, IReadOnlyList<SheetRow> rows, ScreenContext context, Typing? typing)
    {
        var labels = LabelCells(area.Width);
        var found = context.Report.Findings.Where(f => f.Open).ToLookup(f => $"{f.Found.Mends.Item}/{f.Found.Mends.Field}");
        foreach (var (y, at) in Paging.Rows(area, rows.Count, Selected, at => Rows[at].IsFact ? this with { Selected = at } : null))
        {
            var row = rows[at];
            if (!row.IsFact)
            {
                area.PutFit(1, y, area.Width - 1, row.Heading, Tone.Heading);
                continue;
            }
            var current = at == Selected;
            FindingSigns.Put(area, 0, y, found[row.Place], context.Glyphs);
            var shown = row.Shown(context.House);
            area.PutFit(2, y, labels, row.Label, current ? Tone.Selected : shown.Length == 0 ? Tone.Dim : Tone.Text);
            var (x, cells) = (labels + 4, area.Width - labels - 4);
            area.PutFit(labels + 2, y, 2, Unchecked(row) ? NotHeld.Drawn(context.Glyphs)
                : BegunWith.Is(row.Item!, row.Fact!) ? Begun.Drawn(context.Glyphs) : "", Tone.Caution);
            if (current && typing?.Entry.InPlace == row.Place)
            {
                area.PutFit(x, y, cells, typing.Text, Tone.Field);
                area.PutSlot(x, y, cells);
            }
            else
            {
                area.PutFit(x, y, cells, shown.Length == 0 ? NoValue.Drawn(context.Glyphs) : shown,
                    current ? Tone.Selected : shown.Length == 0 ? Tone.Dim : Tone.Text);
            }
        }
    }

    private static bool Unchecked(SheetRow row) =>
        SheetValues.Of(row.Item!.Kind).Contains(row.Fact!) && row.Item.Latest(row.Field)?.Stored is not null
        && !SheetMark.Holds(row.Item, row.Fact!);

    private static string Beside(SheetRow row, string companion, string what, string unit) =>
        row.Item!.Latest(companion)?.Stored is { } stored ? $", {what} {stored} {unit}" : "";

    private int LabelCells(int width) => Math.Min(Rows.Where(r => r.IsFact).Select(r => TextWidth.Of(r.Label)).DefaultIfEmpty(12).Max() + 1, width / 2 + 1);

    /// <summary>
    /// What the detail under the cursor is, the whole value where the row cut it, who said it, what is wrong with it: the line after that, and the findings
    /// that were shown.
    /// </summary>
    private (int Y, IReadOnlyCollection<Finding> Said) DrawAbout(Area area, ScreenContext context, int valueCells)
    {
        if (Current is not { } row)
            return (0, []);
        var y = area.PutWrapped(0, 0, 5, row.Fact!.Help, Tone.Text);
        if (row.Shown(context.House) is var shown && TextWidth.Of(shown) > valueCells)
            y = area.PutWrapped(0, y, 4, shown, Tone.Strong);
        if (row.Item!.Latest(row.Field) is { Stored: not null } head)
        {
            var meter = row.Item.Latest(Companion.Meter(row.Field))?.Stored;
            var with = (meter is null ? "" : $", with {meter}")
                + Beside(row, Companion.Leads(row.Field), "leads", "ohm") + Beside(row, Companion.CableAt(row.Field), "cable at", "C")
                + Beside(row, Companion.MeterStep(row.Field), "last digit", "ohm");
            y = BegunWith.Is(row.Item, row.Fact)
                ? area.PutWrapped(0, y, 2, "What the program began with: nobody typed it.", Tone.Caution)
                : area.PutWrapped(0, y, 2, string.Create(CultureInfo.InvariantCulture, $"{head.By}, {head.At:yyyy-MM-dd HH:mm}{with}"), Tone.Dim);
        }
        if (Unchecked(row))
            y = area.PutWrapped(0, y, 3, $"{NotHeld.Drawn(context.Glyphs)} Not checked against the maker's sheet yet. c says that it was.", Tone.Caution);
        var said = new List<Finding>();
        foreach (var finding in context.Report.Findings.Where(f => f.Open && $"{f.Found.Mends.Item}/{f.Found.Mends.Field}" == row.Place)
            .TakeWhile(_ => y < area.Height - 1))
        {
            y = UnitCard.Put(area, y, finding, context);
            y = area.PutWrapped(2, y, 3, finding.Found.Mend.In(context.House), Tone.Note);
            said.Add(finding);
        }
        return (Math.Min(y, area.Height), said);
    }

    private static int FirstFact(IReadOnlyList<SheetRow> rows) => Math.Max(0, rows.ToList().FindIndex(r => r.IsFact));
}
