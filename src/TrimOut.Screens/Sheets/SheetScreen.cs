using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Sheets;

/// <summary>All facts of one thing, edited in place.</summary>
internal sealed record SheetScreen(SheetOf Of, int Selected, string Title, IReadOnlyList<SheetRow> Rows) : IScreen, IAsked
{
    public Unit? UnitAt(Sight sight) => Of is OfUnit of ? sight.House.FindUnit(of.UnitId) : null;

    public AskedFigures? FiguresAt(Sight sight) => UnitAt(sight) is { } unit ? new AskedFigures(unit.Tag, UnitFigures.Of(unit), Current?.Fact)
        : Of is OfItem item && sight.House.FindPanel(item.ItemId) is { } panel ? new AskedFigures(panel.Name, PanelFigures.Of(panel), null) : null;

    public IReadOnlyList<IKeyAction> Keys => SheetKeys.All;

    public SheetRow? Current => Selected < Rows.Count && Rows[Selected].IsFact ? Rows[Selected] : null;

    public static SheetScreen At(SheetOf of, House house)
    {
        var rows = of.Rows(house);
        return new SheetScreen(of, FirstFact(rows), of.Title(house), rows);
    }

    public static SheetScreen OfUnit(Unit unit) => At(new OfUnit(unit.Id), unit.House);

    public static SheetScreen OfHouse(House house) => At(new OfItem(House.RootId), house);

    /// <summary>The sheet with the field that mends a finding under the cursor.</summary>
    public static SheetScreen Mending(House house, FieldRef field)
    {
        var screen = house.Find(field.Item) is { } item ? At(SheetOf.Holding(house, item), house) : OfHouse(house);
        return screen.On($"{field.Item}/{field.Field}");
    }

    /// <summary>With the cursor on a place, or where it was when that place is not here.</summary>
    public SheetScreen On(string place)
    {
        var at = Rows.ToList().FindIndex(r => r.IsFact && r.Place == place);
        return at < 0 ? this : this with { Selected = at };
    }

    public IScreen Fit(Sight sight)
    {
        var place = Current?.Place;
        var fresh = At(Of, sight.House) with { Selected = Math.Clamp(Selected, 0, Math.Max(0, Of.Rows(sight.House).Count - 1)) };
        return place is null ? fresh : fresh.On(place);
    }

    public SheetScreen Move(int by)
    {
        var at = Math.Clamp(Selected + by, 0, Math.Max(0, Rows.Count - 1));
        var way = by < 0 ? -1 : 1;
        while (at >= 0 && at < Rows.Count && !Rows[at].IsFact)
            at += way;
        return at < 0 || at >= Rows.Count ? this : this with { Selected = at };
    }

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        if (Rows.Count == 0)
        {
            area.Put(2, 1, "This is no longer in the house. Esc goes back.", Tone.Strong);
            return;
        }
        var rows = Of.Rows(sight.House);
        var split = Math.Clamp(area.Width * 11 / 20, 40, 66);
        DrawRows(area.Part(0, 0, split, area.Height), rows, sight, typing);
        var side = area.Part(split + 1, 0, area.Width - split - 1, area.Height);
        var about = DrawAbout(side, sight);
        if (Of is OfUnit of && sight.House.FindUnit(of.UnitId) is { } unit)
            UnitCard.Draw(side.Rows(about + 1, side.Height - about - 1), unit, sight, Pictures.For(Current?.Fact));
    }

    private void DrawRows(Area area, IReadOnlyList<SheetRow> rows, Sight sight, Typing? typing)
    {
        var labels = Math.Min(24, area.Width / 2);
        var found = sight.Report.Findings.Where(f => f.Open).ToLookup(f => $"{f.Found.Mends.Item}/{f.Found.Mends.Field}");
        var top = Paging.Top(Selected, area.Height);
        for (var y = 0; y < area.Height && top + y < rows.Count; y++)
        {
            var row = rows[top + y];
            if (!row.IsFact)
            {
                area.PutFit(1, y, area.Width - 1, row.Heading, Tone.Heading);
                continue;
            }
            var current = top + y == Selected;
            var worst = found[row.Place].Select(f => (Severity?)f.Check.Severity).Min();
            area.PutFit(0, y, 2, worst is null ? "" : worst == Severity.Stop ? sight.Glyphs.Stop : "*", worst is null ? Tone.Text : UnitCard.ToneOf(worst.Value));
            var shown = row.Shown(sight.House);
            area.PutFit(2, y, labels, row.Label, current ? Tone.Selected : shown.Length == 0 ? Tone.Dim : Tone.Text);
            var (x, cells) = (labels + 4, area.Width - labels - 4);
            area.PutFit(labels + 2, y, 2, CheckedMark(row), Tone.Caution);
            if (current && typing?.Entry.InPlace == row.Place)
            {
                area.PutFit(x, y, cells, typing.Text, Tone.Field);
                area.PutSlot(x, y, cells);
            }
            else
            {
                area.PutFit(x, y, cells, shown.Length == 0 ? sight.Glyphs.Nothing : shown, current ? Tone.Selected : shown.Length == 0 ? Tone.Dim : Tone.Text);
            }
        }
    }

    /// <summary>A question mark beside a kit value that nobody held against the maker's sheet.</summary>
    private static string CheckedMark(SheetRow row) => Unchecked(row) ? "?" : "";

    private static bool Unchecked(SheetRow row) =>
        FactTable.IsKit(row.Item!.Kind) && row.Item.Latest(row.Field)?.Stored is not null && row.Item.Latest(Companion.Checked(row.Field))?.Stored is null;

    private static string Beside(SheetRow row, string companion, string what, string unit) => row.Item!.Latest(companion)?.Stored is { } stored ? $", {what} {stored} {unit}" : "";

    private int DrawAbout(Area area, Sight sight)
    {
        if (Current is not { } row)
            return 0;
        var y = area.PutWrapped(0, 0, 3, row.Fact!.Help, Tone.Text);
        if (row.Item!.Latest(row.Field) is { Stored: not null } head)
        {
            var meter = row.Item.Latest(Companion.Meter(row.Field))?.Stored;
            y = area.PutWrapped(0, y, 2, string.Create(CultureInfo.InvariantCulture, $"{head.By}, {head.At:yyyy-MM-dd HH:mm}{(meter is null ? "" : $", with {meter}")}{Beside(row, Companion.Leads(row.Field), "leads", "ohm")}{Beside(row, Companion.CableAt(row.Field), "cable at", "C")}"), Tone.Dim);
        }
        if (Unchecked(row))
            y = area.PutWrapped(0, y, 3, "? Not held against the maker's sheet yet. c says that it was.", Tone.Caution);
        foreach (var finding in sight.Report.Findings.Where(f => f.Open && $"{f.Found.Mends.Item}/{f.Found.Mends.Field}" == row.Place))
        {
            y = UnitCard.Put(area, y, finding, sight);
            y = area.PutWrapped(2, y, 3, finding.Found.Mend, Tone.Good);
        }
        return y;
    }

    private static int FirstFact(IReadOnlyList<SheetRow> rows) => Math.Max(0, rows.ToList().FindIndex(r => r.IsFact));
}
