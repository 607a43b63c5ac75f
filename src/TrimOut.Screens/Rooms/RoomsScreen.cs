using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Rooms;

/// <summary>Floors, rooms and windows in walking order, to be named, ordered and merged.</summary>
/// <param name="RowId">The row under the cursor.</param>
/// <param name="At">Where that was, for when it is gone.</param>
internal sealed record RoomsScreen(string? RowId, int At) : IFiltered, IAsked
{
    private const int LeastCard = 34;

    public string Title => "Rooms";

    public IReadOnlyList<IKeyAction> Keys => RoomsKeys.All;

    public IReadOnlyList<Sign> Signs => FindingSigns.All;

    public static RoomsScreen On(string? id, ScreenContext context) => (RoomsScreen)new RoomsScreen(id, 0).Fit(context);

    public string Search { get; init; } = "";

    /// <summary>The rows that are shown: windows that fit, with their rooms and floors, and whole rooms and floors that do.</summary>
    public IReadOnlyList<RoomRow> Rows(House house) => Search.Length == 0 ? RoomRows.Of(house)
        : [.. RoomRows.Of(house).Where(r => !r.IsFloor && Filtering.Fits($"{r.Floor} {r.Room?.Name} {(r.Window is null ? "" : Text(r, house))}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Rows(context.House).Count, RoomRows.Of(context.House).Count);

    public IScreen Searching(string search, ScreenContext context) => (this with { Search = search, At = 0 }).Fit(context);

    public RoomRow? Current(ScreenContext context) => Rows(context.House).FirstOrDefault(r => r.Id == RowId);

    public Unit? UnitAt(ScreenContext context) => Current(context)?.Window is { LeftOut: false } window ? window.Units.FirstOrDefault() : null;

    public RoomsScreen Moved(ScreenContext context, int by)
    {
        var rows = Rows(context.House);
        var to = Paging.Move(At, by, rows.Count);
        return this with { RowId = to < rows.Count ? rows[to].Id : null, At = to };
    }

    public IScreen Fit(ScreenContext context)
    {
        var at = Rows(context.House).ToList().FindIndex(r => r.Id == RowId);
        return at < 0 ? Moved(context, 0) : this with { At = at };
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var rows = Rows(context.House);
        if (rows.Count == 0 && Search.Length == 0)
        {
            area.Put(2, 1, "This house has no room yet.", Tone.Strong);
            area.PutWrapped(2, 3, 3, "n adds one. On the job sheet the line of a window makes its room: @Kitchen, or @Kitchen/Upper.", Tone.Text);
            return;
        }
        area.PutFit(1, 0, area.Width - 1, "In walking order, as on every list and paper. < and > move a row.", Tone.Dim);
        var left = Math.Min(area.Width - LeastCard - 3, 70);
        var list = area.Part(0, 2, left, area.Height - 2);
        foreach (var (y, at) in Paging.Rows(list, rows.Count, At, at => new RoomsScreen(rows[at].Id, at)))
        {
            var row = rows[at];
            list.PutFit(0, y, list.Width, Text(row, context.House), at == At ? Tone.Selected
                : row.IsFloor ? Tone.Heading : row.Window is null ? Tone.Strong : row.Window.LeftOut ? Tone.Dim : Tone.Text);
            if (row.Window is { LeftOut: false } window)
                FindingSigns.Put(list, 4, y, window.Units.SelectMany(context.Report.About), context.Glyphs, at == At ? Tone.Selected : null);
        }
        for (var y = 2; y < area.Height; y++)
            area.Put(left, y, context.Glyphs.Down, Tone.Dim);
        if (Current(context) is { } current)
            DrawAbout(area.Part(left + 2, 2, area.Width - left - 2, area.Height - 2), current, context);
    }

    private static string Text(RoomRow row, House house) => row switch
    {
        { Window: { LeftOut: true } w } => $"      {w.Tag}  {JobSheetRows.LeftOutText(w)}",
        { Window: { } w } => $"      {w.Tag}  {string.Join(", ", w.Units.Select(u => u.Kind?.Name ?? "no kind yet").Distinct())}",
        { Room: { } r } => string.Create(CultureInfo.InvariantCulture, $"{row.Place,4}  {r.Name}"),
        _ when RoomRows.HeadsRoomless(row) => " (no room yet)",
        { Floor: "" } => " (no floor yet)",
        _ => $" {row.Floor}",
    };

    private static void DrawAbout(Area area, RoomRow row, ScreenContext context)
    {
        if (row.Window is { LeftOut: false } window && window.Units.FirstOrDefault() is { } unit)
        {
            UnitCard.Draw(area, unit, context);
            return;
        }
        var y = 0;
        if (row.Window is { } leftOut)
        {
            LeftOutCard.Draw(area, leftOut);
        }
        else if (row.Room is { } room)
        {
            y = area.PutWrapped(0, y, 2, room.Floor is { } floor ? $"{room.Name}, {floor}" : $"{room.Name}, no floor yet", Tone.Strong);
            y = area.PutWrapped(0, y, 6, $"Windows: {Names(room.Windows.Select(w => w.LeftOut ? $"({w.Tag})" : w.Tag))}", Tone.Text);
            var remotes = context.House.Remotes.Where(r => r.Room?.Id == room.Id).Select(r => r.Name);
            y = area.PutWrapped(0, y, 4, $"Remotes: {Names(remotes)}", Tone.Text);
            area.PutWrapped(0, y + 1, 4, "M takes all of it into another room, such as that of the right name.", Tone.Dim);
        }
        else if (RoomRows.HeadsRoomless(row))
        {
            area.PutWrapped(0, 0, 4, "These windows have no room yet. M on a window takes it into one.", Tone.Text);
        }
        else
        {
            var rooms = context.House.Rooms.Where(r => Core.SameName.Comparer.Equals(r.Floor ?? "", row.Floor));
            y = area.PutWrapped(0, y, 2, row.Floor.Length == 0 ? "Rooms without a floor" : row.Floor, Tone.Strong);
            y = area.PutWrapped(0, y, 6, $"Rooms: {Names(rooms.Select(r => r.Name))}", Tone.Text);
            area.PutWrapped(0, y + 1, 4, "Enter names the floor for all of them; < and > move it whole.", Tone.Dim);
        }
    }

    private static string Names(IEnumerable<string> names) => string.Join(", ", names) is { Length: > 0 } all ? all : "none";
}
