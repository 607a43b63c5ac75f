using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.History;

/// <summary>The job sheet of the house as it stood when a change of its history was the last one: to look at only.</summary>
/// <param name="Count">How many changes it had.</param>
/// <param name="Then">What was seen then.</param>
/// <param name="Sheet">The job sheet.</param>
internal sealed record AsItStoodScreen(int Count, ScreenContext Then, JobSheetScreen Sheet) : IFiltered, IAsked
{
    private const int BannerLines = 3;

    public string Title => "As it stood";

    public IReadOnlyList<IKeyAction> Keys => AsItStoodKeys.All;

    public IReadOnlyList<Sign> Signs => Sheet.Signs;

    public string Search => Sheet.Search;

    public bool Filters => Sheet.Filters;

    public bool FrameSays => Sheet.FrameSays;

    (int Shown, int All) IFiltered.Count(ScreenContext context) => Sheet.Count(Then);

    public IScreen Searching(string search, ScreenContext context) => this with { Sheet = (JobSheetScreen)Sheet.Searching(search, Then) };

    public IScreen Unfiltered(ScreenContext context) => this with { Sheet = (JobSheetScreen)Sheet.Unfiltered(Then) };

    public Unit? UnitAt(ScreenContext context) => Sheet.UnitAt(Then);

    /// <summary>Goes back beside the keys: replaying and judging a whole house takes longer than a key may.</summary>
    /// <param name="context">What is seen now.</param>
    /// <param name="count">How many changes the house is to have.</param>
    /// <param name="from">The screen of another change, in whose place this one is shown; null for none.</param>
    public static Ask.Beside Show(ScreenContext context, int count, AsItStoodScreen? from = null) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Going back to change {count}"), (_, _, _) =>
        {
            var then = context.AsItStood(count);
            var touched = ChangeCard.UnitOf(context.Log.Changes[count - 1], then.House)?.Id;
            var sheet = (from?.Sheet ?? JobSheetScreen.At(then)) with { UnitId = touched ?? from?.Sheet.UnitId };
            return new Ask.Open(new AsItStoodScreen(count, then, (JobSheetScreen)sheet.Fit(then)), InPlace: from is not null);
        });

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var last = context.Log.Changes[Count - 1];
        var when = string.Create(CultureInfo.InvariantCulture,
            $" AS IT STOOD after change {Count} of {context.Log.Changes.Count}, {last.SaidAt:yyyy-MM-dd HH:mm}, {last.By}");
        area.PutFit(0, 0, area.Width, when, Tone.Selected);
        area.PutFit(0, 1, area.Width, $" {last.What}", Tone.Strong);
        area.PutFit(0, 2, area.Width, " Only to look at. Left and Right: the change before and after. Esc: today.", Tone.Caution);
        Sheet.Draw(area.Rows(BannerLines, area.Height - BannerLines), Then, null);
        // The sheet chooses on itself; here it is only part of what is seen, and nothing on it opens.
        for (var at = 0; at < area.Frame.Spots.Count; at++)
        {
            var spot = area.Frame.Spots[at];
            if (spot.Choose is { } choose)
                area.Frame.Spots[at] = spot with { IsChosen = false, Choose = () => choose() is JobSheetScreen sheet ? this with { Sheet = sheet } : null };
        }
    }
}

/// <summary>Keys of the house as it stood: those of the job sheet that only look.</summary>
internal static class AsItStoodKeys
{
    private static readonly HashSet<string> Looking = ["S", "!", "o", "*", "#", "[", "]", .. Moves.Strokes.Except(["left", "right"])];

    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<AsItStoodScreen>("left", "Change before", "The house as it stood one change before.", (s, context) => Go(s, context, -1))
            { Disabled = (s, _) => s.Count > 1 ? null : "This is the first change." },
        new KeyAction<AsItStoodScreen>("right", "Change after", "The house as it stood one change later.", (s, context) => Go(s, context, 1))
            { Disabled = (s, context) => s.Count < context.Log.Changes.Count ? null : "This is the latest change." },
        Filtering.Key<AsItStoodScreen>("units", "tag, kind, room or floor"),
        .. JobSheetKeys.All.Where(k => k.Strokes.Any(Looking.Contains)).Select(k => new KeyAction<AsItStoodScreen>(
            k.Strokes.First(Looking.Contains), k.Name, k.Help,
            (s, _) => new Transition(s with { Sheet = (JobSheetScreen)k.Press(s.Sheet, s.Then).Screen })) { OnBar = k.OnBar }),
    ];

    private static Transition Go(AsItStoodScreen s, ScreenContext context, int by) => new(s, AsItStoodScreen.Show(context, s.Count + by, s));
}
