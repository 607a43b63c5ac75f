using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Controls;

/// <summary>Which remote moves which unit: units down, remotes across; hubs and their limits on top.</summary>
internal sealed record ControlsScreen(int Row, int Column) : IScreen
{
    public string Title => "Controls";

    public IReadOnlyList<IKeyAction> Keys => ControlsKeys.All;

    public static ControlsScreen At(Sight sight) => new(0, 0);

    public Unit? Unit(Sight sight) => Row < sight.House.Units.Length ? sight.House.Units[Row] : null;

    public Remote? Remote(Sight sight) => Column < sight.House.Remotes.Length ? sight.House.Remotes[Column] : null;

    public IScreen Fit(Sight sight) => this with { Row = Paging.Move(Row, 0, sight.House.Units.Length), Column = Paging.Move(Column, 0, sight.House.Remotes.Length) };

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        var y = 0;
        foreach (var hub in sight.House.Hubs)
        {
            var devices = hub.Units.Count() + hub.Remotes.Count();
            area.PutFit(1, y++, area.Width - 1, string.Create(CultureInfo.InvariantCulture, $"{hub.Name}: {devices} of {hub.Type?.Devices?.ToString(CultureInfo.InvariantCulture) ?? "?"} devices{(hub.Show(Core.Facts.HubFacts.Location) is { Length: > 0 } where ? $", {where}" : "")}"), Tone.Heading);
        }
        if (sight.House.Hubs.IsEmpty)
            area.Put(1, y++, "No hub yet: h adds one.", Tone.Strong);
        if (sight.House.Remotes.IsEmpty)
        {
            area.Put(1, y, "No remote yet: n adds one.", Tone.Strong);
            return;
        }
        var remotes = sight.House.Remotes;
        var cells = Math.Clamp((area.Width - 30) / remotes.Length, 9, 22);
        var across = Math.Max(1, (area.Width - 30) / cells);
        var first = Paging.Top(Column, across);
        var shown = remotes.Skip(first).Take(across).ToList();
        foreach (var (remote, at) in shown.Select((r, at) => (r, at)))
        {
            var tone = first + at == Column ? Tone.Selected : Tone.Text;
            area.PutFit(30 + at * cells, y, cells - 1, remote.Name, tone);
            area.PutFit(30 + at * cells, y + 1, cells - 1, string.Create(CultureInfo.InvariantCulture, $"{remote.Units.Count()}/{remote.Type?.Units?.ToString(CultureInfo.InvariantCulture) ?? "?"}"), Tone.Dim);
        }
        y += 2;
        var units = sight.House.Units;
        var height = area.Height - y - 2;
        var top = Paging.Top(Row, height);
        for (var line = 0; line < height && top + line < units.Length; line++)
        {
            var (unit, at) = (units[top + line], top + line);
            area.PutFit(1, y + line, 28, $"{unit.Tag}  {unit.Window.Room?.Name}", at == Row ? Tone.Selected : Tone.Text);
            foreach (var (remote, column) in shown.Select((r, c) => (r, c)))
            {
                var moves = unit.Remotes.Any(r => r.Id == remote.Id);
                area.PutFit(30 + column * cells, y + line, cells - 1, moves ? "  moves" : $"  {sight.Glyphs.Nothing}", at == Row && first + column == Column ? Tone.Selected : moves ? Tone.Strong : Tone.Dim);
            }
        }
        if (Remote(sight) is { } selected)
            area.PutFit(1, area.Height - 1, area.Width - 1, $"{selected.Name}: {selected.Room?.Name ?? "no room yet"}{Presets(selected)}", Tone.Dim);
    }

    private static string Presets(Remote remote) =>
        string.Concat(remote.Presets.Select(p => $"; {p.Name}: {string.Join(", ", p.Positions.Select(x => string.Create(CultureInfo.InvariantCulture, $"{x.Unit.Tag} {x.PercentOpen} %")))}"));
}
