using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Controls;

/// <summary>Which remote moves which unit: units down, remotes across; hubs and their limits on top.</summary>
internal sealed record ControlsScreen(int Row, int Column) : IFiltered, ITable
{
    public string Title => "Controls";

    private const int MostNameLines = 3;

    private const int MostSaid = 2;

    private static readonly Sign Moves = Sign.Words("moves", "the remote above moves the unit of this row");

    private static readonly Sign Still = new(g => g.Nothing, "it does not");

    public IReadOnlyList<IKeyAction> Keys => ControlsKeys.All;

    public IReadOnlyList<Sign> Signs { get; } =
        [Moves, Still, Sign.Words(Load(4, "10"), "under a remote: the units it moves, of the most that it can; a ? behind that: nobody checked it against the sheet"), .. FindingSigns.Counting];

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        [["Unit", "Room", .. context.House.Remotes.Select(r => r.Name)],
            .. Units(context).Select(u => (IReadOnlyList<string>)[u.Tag, u.Window.Room?.FullName ?? "",
                .. context.House.Remotes.Select(r => u.Remotes.Any(x => x.Id == r.Id) ? "moves" : "")])];

    public static ControlsScreen At(ScreenContext context) => new(0, 0);

    /// <summary>With the cursor where a remote and a unit meet.</summary>
    public static ControlsScreen On(ScreenContext context, string remote, string unit) => new(
        Math.Max(0, context.House.Units.ToList().FindIndex(u => u.Id == unit)), Math.Max(0, context.House.Remotes.ToList().FindIndex(r => r.Id == remote)));

    /// <summary>The worst that is told here, of what is under the cursor before the hubs.</summary>
    public Finding? Worst(ScreenContext context) => Said(context).Where(f => f.Open).OrderBy(f => f.Check.Severity)
        .ThenBy(f => f.Subject.Kind == ItemKind.Hub).FirstOrDefault();

    public string Search { get; init; } = "";

    /// <summary>The units that are shown.</summary>
    public IReadOnlyList<Unit> Units(ScreenContext context) => Search.Length == 0 ? context.House.Units
        : [.. context.House.Units.Where(u => Filtering.Fits($"{NameOf(u)} {u.Kind?.Name} {string.Join(' ', u.Remotes.Select(r => r.Name))}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Units(context).Count, context.House.Units.Length);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Row = Filtering.Keep(Units(context), Row, to.Units(context), u => u.Id) };
    }

    public Unit? Unit(ScreenContext context) => Units(context) is var units && Row < units.Count ? units[Row] : null;

    public Remote? Remote(ScreenContext context) => Column < context.House.Remotes.Length ? context.House.Remotes[Column] : null;

    public IScreen Fit(ScreenContext context) =>
        this with { Row = Paging.Move(Row, 0, Units(context).Count), Column = Paging.Move(Column, 0, context.House.Remotes.Length) };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var (list, card) = Wide.Split(area, context.Glyphs);
        DrawList(list, context);
        if (card is { } beside && Remote(context) is { } remote)
            RemoteCard.Draw(beside, remote, context);
    }

    private void DrawList(Area area, ScreenContext context)
    {
        var y = 0;
        foreach (var hub in context.House.Hubs)
        {
            var devices = hub.Units.Count() + hub.Remotes.Count();
            var most = UncheckedValues.Count(hub.Type, HubTypeFacts.Devices);
            var where = hub.Show(Core.Facts.HubFacts.Location) is { Length: > 0 } place ? $", {place}" : "";
            var wrong = context.Report.About(hub).Where(f => f.Open).ToList();
            var x = area.Put(4, y, $"{hub.Name}: ", Tone.Heading);
            x = area.Put(x, y, string.Create(CultureInfo.InvariantCulture, $"{devices} of {most} devices"),
                FindingSigns.AnyStop(wrong) ? Tone.Stop : Tone.Heading);
            area.PutFit(x, y, area.Width - x, where, Tone.Heading);
            FindingSigns.PutCount(area, 0, y++, wrong.Concat(StopsOf(hub.Type?.Item, context)), context.Glyphs);
        }
        if (context.House.Hubs.IsEmpty)
            area.Put(1, y++, "No hub yet: N adds one.", Tone.Strong);
        if (context.House.Remotes.IsEmpty)
        {
            area.Put(1, y, "No remote yet: n adds one.", Tone.Strong);
            return;
        }
        var said = Said(context).Where(f => f.Open).OrderBy(f => f.Check.Severity).Take(MostSaid).ToList();
        var lines = said.ConvertAll(f => Math.Min(2, UnitCard.Lines(f, area.Width - 1, context)));
        var below = area.Height - 1 - lines.Sum();
        DrawMatrix(area.Rows(y, below - y), context);
        foreach (var (finding, height) in said.Zip(lines))
        {
            UnitCard.Put(area.Part(1, below, area.Width - 1, height), 0, finding, context);
            below += height;
        }
        if (Remote(context) is { } selected)
            area.PutFit(1, area.Height - 1, area.Width - 1, $"{selected.Name}: {selected.Room?.FullName ?? "no room yet"}{Presets(selected)}", Tone.Dim);
    }

    /// <summary>What is wrong with the hubs and with what is under the cursor.</summary>
    private IEnumerable<Finding> Said(ScreenContext context) => context.House.Hubs.SelectMany(context.Report.About)
        .Concat(Remote(context) is { } remote ? context.Report.About(remote).Concat(remote.Presets.SelectMany(context.Report.About)) : [])
        .Concat(Unit(context) is { } unit ? context.Report.About(unit).Where(f => f.Check.Phase is Phase.Pair or Phase.Limits) : []);

    /// <summary>Open stops of the part that something is of: its sheet contradicts itself, say.</summary>
    private static IEnumerable<Finding> StopsOf(Item? part, ScreenContext context) =>
        part is null ? [] : context.Report.About(part).Where(FindingSigns.IsStop);

    private void DrawMatrix(Area area, ScreenContext context)
    {
        var (remotes, units) = (context.House.Remotes, Units(context));
        var side = Math.Clamp(units.Select(u => TextWidth.Of(NameOf(u))).DefaultIfEmpty().Max() + 6, 14, area.Width * 2 / 5);
        var least = Math.Clamp(remotes.Max(r => r.Name.Split(' ').Max(TextWidth.Of)) + 2, 8, Math.Max(8, area.Width - side));
        var cells = Math.Clamp((area.Width - side) / remotes.Length, least, Math.Max(least, remotes.Max(r => TextWidth.Of(r.Name)) + 2));
        var across = Math.Max(1, (area.Width - side) / cells);
        var first = Paging.Top(Column, across, remotes.Length);
        var shown = remotes.Skip(first).Take(across).ToList();
        var beyond = Paging.Beyond(first, remotes.Length - first - shown.Count, "to the left", "to the right");
        area.PutFit(1, 0, area.Width - 1, beyond.Length == 0 ? "" : $"Remotes: {beyond}", Tone.Dim);
        var y = beyond.Length == 0 ? 0 : 1;
        var names = shown.Max(r => Math.Min(MostNameLines, TextWidth.Wrap(r.Name, cells - 1).Count()));
        foreach (var (remote, at) in shown.Select((r, at) => (r, at)))
        {
            var tone = first + at == Column ? Tone.Selected : Tone.Text;
            var head = area.Part(side + at * cells, y, cells - 1, names + 1);
            head.PutWrapped(0, 0, names, remote.Name, tone);
            var stops = context.Report.About(remote).Concat(remote.Presets.SelectMany(context.Report.About)).Concat(StopsOf(remote.Type?.Item, context))
                .Where(FindingSigns.IsStop).Distinct().Count();
            var wrong = stops > 0;
            head.Put(0, names, (wrong ? FindingSigns.Counted(context.Glyphs.Stop, stops) + " " : "") + Load(remote.Units.Count(), UncheckedValues.Count(remote.Type, RemoteTypeFacts.Units)),
                wrong ? Tone.Stop : Tone.Dim);
        }
        var list = area.Rows(y + names + 1, area.Height - y - names - 1);
        foreach (var (line, at) in Paging.Rows(list, units.Count, Row, at => this with { Row = at }))
        {
            list.PutFit(3, line, side - 4, " " + NameOf(units[at]), at == Row ? Tone.Selected : Tone.Text);
            FindingSigns.PutCount(list, 0, line, UnitCard.Around(context, units[at]), context.Glyphs);
            foreach (var (remote, column) in shown.Select((r, c) => (r, c)))
            {
                var moves = units[at].Remotes.Any(r => r.Id == remote.Id);
                list.PutSpot(side + column * cells, line, cells - 1, at == Row && first + column == Column,
                    () => this with { Row = at, Column = first + column });
                list.PutFit(side + column * cells, line, cells - 1, "  " + (moves ? Moves : Still).Drawn(context.Glyphs),
                    at == Row && first + column == Column ? Tone.Selected : moves ? Tone.Strong : Tone.Dim);
            }
        }
    }

    private static string NameOf(Unit unit) => $"{unit.Tag}  {unit.Window.Room?.FullName}";

    private static string Load(int units, string most) => $"{NumberText.Plain(units)}/{most}";

    private static string Presets(Remote remote) =>
        string.Concat(remote.Presets.Select(p => $"; {p.Name}: {string.Join(", ", p.Positions.Select(Position))}"));

    private static string Position((Unit Unit, int PercentOpen) of) => string.Create(CultureInfo.InvariantCulture, $"{of.Unit.Tag} {of.PercentOpen} %");
}
