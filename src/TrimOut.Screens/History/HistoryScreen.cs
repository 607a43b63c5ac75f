using System.Globalization;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.History;

/// <summary>Who changed what, and when: the latest first.</summary>
internal sealed record HistoryScreen(int Selected) : IScreen
{
    public string Title => "History";

    public IReadOnlyList<IKeyAction> Keys => HistoryKeys.All;

    public static HistoryScreen At(ScreenContext context) => new(0);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var changes = context.Log.Changes;
        area.PutFit(0, 0, area.Width, string.Create(CultureInfo.InvariantCulture, $" {changes.Count} changes; nothing is ever deleted. Kept in {context.Where}"), Tone.Heading);
        var list = area.Rows(1, area.Height - 1);
        foreach (var (y, at) in Paging.Rows(list, changes.Count, Selected))
        {
            var change = changes[changes.Count - 1 - at];
            var inForce = context.Log.IsInForce(change.Id);
            var tone = at == Selected ? Tone.Selected : inForce ? Tone.Text : Tone.Dim;
            list.PutFit(0, y, list.Width, string.Create(CultureInfo.InvariantCulture, $" {change.SaidAt:yyyy-MM-dd HH:mm}"), tone);
            list.PutFit(18, y, 12, change.By, tone);
            list.PutFit(31, y, list.Width - 31, inForce ? change.What : $"(undone) {change.What}", tone);
        }
    }
}

/// <summary>Keys of the history.</summary>
internal static class HistoryKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        .. Moves.Through<HistoryScreen>("change", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, context.Log.Changes.Count) }),
    ];
}
