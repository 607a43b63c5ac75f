using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Office;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Copies;

/// <summary>What two copies of the house disagree about: values with who put them and when, and what one removed while the other went on with it.</summary>
/// <param name="All">All of it, as the house is now.</param>
/// <param name="Selected">The row under the cursor.</param>
/// <param name="Way">The way out under the cursor.</param>
internal sealed record ConflictsScreen(ImmutableArray<Conflict> All, int Selected, int Way) : IFiltered, ITable
{
    public string Title => "In conflict";

    public IReadOnlyList<IKeyAction> Keys => ConflictsKeys.All;

    public string Search { get; init; } = "";

    /// <summary>The conflicts that are listed.</summary>
    public ImmutableArray<Conflict> Listed => Search.Length == 0 ? All : [.. All.Where(c => Filtering.Fits($"{c.About} {Said(c)}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Listed.Length, All.Length);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        var at = Filtering.Keep(Listed, Selected, to.Listed, c => c);
        return to.On(at, stay: to.Listed is var listed && at < listed.Length && listed[at] == Current);
    }

    public Conflict? Current => Listed is var listed && Selected < listed.Length ? listed[Selected] : null;

    public static ConflictsScreen At(ScreenContext context) => new ConflictsScreen([.. Conflict.All(context.House)], 0, 0).On(0);

    public IScreen Fit(ScreenContext context) => (this with { All = [.. Conflict.All(context.House)] }).On(Selected);

    private static string Said(Conflict conflict) => string.Join(' ', conflict.Ways.Select(w => w.Says));

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        Listed.Select(c => (IReadOnlyList<string>)[c.About, .. c.Ways.Select(w => w.Says)]);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        if (Current is not { } current)
        {
            if (Search.Length > 0)
                return;
            area.PutWrapped(2, 1, 2, "Nothing is in conflict. What a copy brings that disagrees with this house stands here until somebody chooses.",
                Tone.Strong);
            return;
        }
        var y = area.PutWrapped(1, 0, 2,
            $"{NumberText.Counted(All.Length, "conflict")}. Left and Right go through the ways out, Enter takes the one that is marked.", Tone.Strong);
        var detail = Math.Min(area.Height / 2, 3 + current.Ways.Length * 2);
        var list = area.Rows(y + 1, area.Height - y - 1 - detail);
        var listed = Listed;
        foreach (var (line, at) in Paging.Rows(list, listed.Length, Selected, at => On(at)))
            list.PutFit(0, line, list.Width, $" {listed[at].About.TrimEnd(':')}", at == Selected ? Tone.Selected : Tone.Text);
        DrawWays(area.Rows(area.Height - detail, detail), current, context);
    }

    private void DrawWays(Area area, Conflict conflict, ScreenContext context)
    {
        for (var x = 0; x < area.Width; x++)
            area.Put(x, 0, context.Glyphs.Across, Tone.Dim);
        var y = area.PutWrapped(1, 1, 2, conflict.About, Tone.Strong);
        foreach (var (way, at) in conflict.Ways.Select((w, at) => (w, at)))
        {
            var from = y;
            area.Put(1, y, at == Way ? context.Glyphs.Arrow : " ", Tone.Strong);
            y = area.PutWrapped(3, y, 2, way.Says, at == Way ? Tone.Selected : Tone.Text);
            for (var line = from; line < y; line++)
                area.PutSpot(1, line, area.Width - 1, at == Way, () => this with { Way = at });
        }
    }

    /// <summary>With another row under the cursor, and of that the way out that leaves all as it is; of the same row the way that was marked.</summary>
    internal ConflictsScreen On(int selected, bool stay = false)
    {
        var listed = Listed;
        var at = Paging.Move(selected, 0, listed.Length);
        return this with { Selected = at, Way = stay ? Way : at < listed.Length ? Shown(listed[at]) : 0 };
    }

    /// <summary>The way that leaves all as it is shown now: of values the last one.</summary>
    private static int Shown(Conflict conflict) => conflict.Ways.Length - 1;
}

/// <summary>Keys of what is in conflict.</summary>
internal static class ConflictsKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<ConflictsScreen>("enter", "Take", "Takes the way out that is marked, after a question; undo takes it back.",
            (s, _) => new Transition(s, Sure(s))) { Disabled = Nothing },
        new KeyAction<ConflictsScreen>("right", "Next way out", "The next value, or what else can be done.", (s, _) => new Transition(Turned(s, 1)))
            { Disabled = Nothing },
        new KeyAction<ConflictsScreen>("left", "Way out before", "The value before.", (s, _) => new Transition(Turned(s, -1)))
            { Disabled = Nothing, OnBar = false },
        OfficeKeys.Opening<ConflictsScreen>(),
        Filtering.Key<ConflictsScreen>("conflicts", "tag, detail, or what a way out says"),
        .. Moves.Through<ConflictsScreen>("row", (s, _, by) =>
            Paging.Move(s.Selected, by, s.Listed.Length) is var at ? s.On(at, stay: at == s.Selected) : s),
    ];

    private static string? Nothing(ConflictsScreen s, ScreenContext context) => s.Current is null ? "Nothing is in conflict." : null;

    private static Ask.Confirm Sure(ConflictsScreen s) => new($"Settle it this way: {s.Current!.Ways[s.Way].Says} y settles it, any other key leaves it open.",
        Ask.Confirm.AlsoYes, Transition.Save(s, s.Current.Ways[s.Way].Draft));

    private static ConflictsScreen Turned(ConflictsScreen s, int by) =>
        s with { Way = (s.Way + by + s.Current!.Ways.Length) % s.Current.Ways.Length };
}
