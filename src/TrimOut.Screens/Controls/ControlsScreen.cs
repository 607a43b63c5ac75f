using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Controls;

/// <summary>Which remote moves which unit: units down, remotes across; hubs and their limits on top.</summary>
internal sealed record ControlsScreen(int Row, int Column) : IScreen
{
    public string Title => "Controls";

    private const int MostNameLines = 3;

    private static readonly Sign Moves = Sign.Words("moves", "the remote above moves the unit of this row");

    private static readonly Sign Still = new(g => g.Nothing, "it does not");

    public IReadOnlyList<IKeyAction> Keys => ControlsKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [Moves, Still, Sign.Words(Load(4, 10), "under a remote: the units it moves, of the most that it can")];

    public static ControlsScreen At(ScreenContext context) => new(0, 0);

    public Unit? Unit(ScreenContext context) => Row < context.House.Units.Length ? context.House.Units[Row] : null;

    public Remote? Remote(ScreenContext context) => Column < context.House.Remotes.Length ? context.House.Remotes[Column] : null;

    public IScreen Fit(ScreenContext context) =>
        this with { Row = Paging.Move(Row, 0, context.House.Units.Length), Column = Paging.Move(Column, 0, context.House.Remotes.Length) };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = 0;
        foreach (var hub in context.House.Hubs)
        {
            var devices = hub.Units.Count() + hub.Remotes.Count();
            var most = hub.Type?.Devices?.ToString(CultureInfo.InvariantCulture) ?? "?";
            var where = hub.Show(Core.Facts.HubFacts.Location) is { Length: > 0 } place ? $", {place}" : "";
            area.PutFit(1, y++, area.Width - 1, string.Create(CultureInfo.InvariantCulture, $"{hub.Name}: {devices} of {most} devices{where}"), Tone.Heading);
        }
        if (context.House.Hubs.IsEmpty)
            area.Put(1, y++, "No hub yet: N adds one.", Tone.Strong);
        if (context.House.Remotes.IsEmpty)
        {
            area.Put(1, y, "No remote yet: n adds one.", Tone.Strong);
            return;
        }
        DrawMatrix(area.Rows(y, area.Height - y - 1), context);
        if (Remote(context) is { } selected)
            area.PutFit(1, area.Height - 1, area.Width - 1, $"{selected.Name}: {selected.Room?.FullName ?? "no room yet"}{Presets(selected)}", Tone.Dim);
    }

    private void DrawMatrix(Area area, ScreenContext context)
    {
        var (remotes, units) = (context.House.Remotes, context.House.Units);
        var side = Math.Clamp(units.Select(u => TextWidth.Of(NameOf(u))).DefaultIfEmpty().Max() + 3, 12, area.Width * 2 / 5);
        var least = Math.Clamp(remotes.Max(r => r.Name.Split(' ').Max(TextWidth.Of)) + 2, 8, Math.Max(8, area.Width - side));
        var cells = Math.Clamp((area.Width - side) / remotes.Length, least, Math.Max(least, remotes.Max(r => TextWidth.Of(r.Name)) + 2));
        var across = Math.Max(1, (area.Width - side) / cells);
        var first = Paging.Top(Column, across);
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
            head.PutFit(0, names, head.Width, Load(remote.Units.Count(), remote.Type?.Units), Tone.Dim);
        }
        var list = area.Rows(y + names + 1, area.Height - y - names - 1);
        foreach (var (line, at) in Paging.Rows(list, units.Length, Row))
        {
            list.PutFit(1, line, side - 2, NameOf(units[at]), at == Row ? Tone.Selected : Tone.Text);
            foreach (var (remote, column) in shown.Select((r, c) => (r, c)))
            {
                var moves = units[at].Remotes.Any(r => r.Id == remote.Id);
                list.PutFit(side + column * cells, line, cells - 1, "  " + (moves ? Moves : Still).Drawn(context.Glyphs),
                    at == Row && first + column == Column ? Tone.Selected : moves ? Tone.Strong : Tone.Dim);
            }
        }
    }

    private static string NameOf(Unit unit) => $"{unit.Tag}  {unit.Window.Room?.FullName}";

    private static string Load(int units, int? most) =>
        string.Create(CultureInfo.InvariantCulture, $"{units}/{most?.ToString(CultureInfo.InvariantCulture) ?? "?"}");

    private static string Presets(Remote remote) =>
        string.Concat(remote.Presets.Select(p => $"; {p.Name}: {string.Join(", ", p.Positions.Select(Position))}"));

    private static string Position((Unit Unit, int PercentOpen) of) => string.Create(CultureInfo.InvariantCulture, $"{of.Unit.Tag} {of.PercentOpen} %");
}
