using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Drawings;

/// <summary>A remote with the groups that it moves: room by room, each unit with its position in every preset, and what it leaves out of a room.</summary>
internal static class RemoteCard
{
    public static void Draw(Area area, Remote remote, ScreenContext context)
    {
        var y = area.PutWrapped(0, 0, 2, remote.Name, Tone.Strong);
        string?[] about = [remote.Type?.Name, remote.Room?.FullName, Shown(RemoteFacts.Hub), Shown(RemoteFacts.Plate)];
        y = area.PutWrapped(0, y, 2, string.Join(", ", about.OfType<string>()), Tone.Dim);
        var moved = remote.Units.ToList();
        var most = remote.Type?.Units;
        y = area.PutWrapped(0, y, 1, $"Moves {NumberText.Counted(moved.Count, "unit")}"
            + (most is null ? "" : $" of the {UncheckedValues.Count(remote.Type, RemoteTypeFacts.Units)} that it can"), moved.Count > most ? Tone.Stop : Tone.Text) + 1;
        var presets = remote.Presets.ToList();
        var columns = PresetColumns(area.Width, presets);
        var positions = presets.ConvertAll(p => p.Positions.ToDictionary(x => x.Unit.Id, x => x.PercentOpen));
        foreach (var (preset, at) in presets.Take(columns.Count).Select((p, at) => (p, at)))
            area.PutFit(columns[at], y, PresetCells - 1, preset.Name, Tone.Heading);
        y += presets.Count > 0 ? 1 : 0;
        foreach (var group in moved.GroupBy(u => u.Window.RoomId))
        {
            if (y >= area.Height - 1)
                break;
            var room = group.First().Window.Room;
            area.PutFit(0, y++, area.Width, room?.FullName ?? "no room yet", Tone.Heading);
            foreach (var unit in group.TakeWhile(_ => y < area.Height))
            {
                area.PutFit(1, y, columns.Count > 0 ? columns[0] - 2 : area.Width - 1, $"{unit.Tag}  {unit.Kind?.Name}", Tone.Text);
                for (var at = 0; at < columns.Count; at++)
                {
                    var open = positions[at].TryGetValue(unit.Id, out var per) ? $"{per.ToString(CultureInfo.InvariantCulture)} %" : context.Glyphs.Nothing;
                    area.PutFigure(columns[at], y, PresetCells - 2, open, Tone.Text);
                }
                y++;
            }
            var others = room?.Windows.Where(w => !w.LeftOut).SelectMany(w => w.Units).Where(u => moved.All(m => m.Id != u.Id)).Select(u => u.Tag).ToList()
                ?? [];
            if (others.Count > 0)
                y = area.PutWrapped(1, y, 2, $"not moved here: {string.Join(", ", others)}", Tone.Dim);
        }
        if (moved.Count == 0)
            y = area.PutWrapped(0, y, 2, "No unit yet: Space on a unit says that this remote moves it.", Tone.Caution);
        if (presets.Count > columns.Count)
            area.PutWrapped(0, y, 2, $"More presets: {string.Join(", ", presets.Skip(columns.Count).Select(p => p.Name))}", Tone.Dim);

        string? Shown(Fact fact) => fact.ShowOf(remote.Item, context.House) is { Length: > 0 } shown ? shown : null;
    }

    private const int PresetCells = 10;

    /// <summary>Where the presets stand, as many as there is room for beside the tags.</summary>
    private static List<int> PresetColumns(int width, List<Preset> presets)
    {
        var least = width / 3;
        var most = Math.Min(presets.Count, (width - least) / PresetCells);
        return [.. Enumerable.Range(0, most).Select(at => width - (most - at) * PresetCells)];
    }
}
