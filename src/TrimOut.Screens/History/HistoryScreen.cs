using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Copies;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Office;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.History;

/// <summary>Who changed what, and when: the latest first.</summary>
internal sealed record HistoryScreen(int Selected) : IFiltered, ITable
{
    public string Title => "History";

    public IReadOnlyList<IKeyAction> Keys => HistoryKeys.All;

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        [["When", "By", "What"], .. Counts(context).Select(count => context.Log.Changes[count - 1]).Select(c => (IReadOnlyList<string>)
            [c.SaidAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), c.By, c.What])];

    public static HistoryScreen At(ScreenContext context) => new(0);

    public string Search { get; init; } = "";

    /// <summary>The changes that are shown, the latest first: each as how many there were with it.</summary>
    public IReadOnlyList<int> Counts(ScreenContext context)
    {
        var changes = context.Log.Changes;
        var all = Enumerable.Range(0, changes.Count).Select(at => changes.Count - at);
        return [.. Search.Length == 0 ? all : all.Where(count => Filtering.Fits(TextOf(changes[count - 1]), Search))];
    }

    public (int Shown, int All) Count(ScreenContext context) => (Counts(context).Count, context.Log.Changes.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Counts(context), Selected, to.Counts(context), c => c) };
    }

    public IScreen Fit(ScreenContext context) => this with { Selected = Paging.Move(Selected, 0, Counts(context).Count) };

    private static string TextOf(Change change) => string.Create(CultureInfo.InvariantCulture, $"{change.SaidAt:yyyy-MM-dd HH:mm} {change.By} {change.What}");

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var changes = context.Log.Changes;
        (area, var card) = Wide.Split(area, context.Glyphs);
        var counts = Counts(context);
        if (card is { } beside && Selected < counts.Count)
            ChangeCard.Draw(beside, counts[Selected], context);
        area.PutFit(0, 0, area.Width,
            $" {NumberText.Counted(changes.Count, "change")}; nothing is ever deleted. Kept in {context.Where}", Tone.Heading);
        var list = area.Rows(1, area.Height - 1);
        foreach (var (y, at) in Paging.Rows(list, counts.Count, Selected, at => this with { Selected = at }))
        {
            var change = changes[counts[at] - 1];
            var inForce = context.Log.IsInForce(change.Id);
            var tone = at == Selected ? Tone.Selected : inForce ? Tone.Text : Tone.Dim;
            list.PutFit(0, y, list.Width, string.Create(CultureInfo.InvariantCulture, $" {change.SaidAt:yyyy-MM-dd HH:mm}"), tone);
            list.PutFit(18, y, 12, change.By, tone);
            var undone = change.Edits.Any(e => e is Edit.Undo) ? "brought back since" : "undone";
            list.PutFit(31, y, list.Width - 31, inForce ? change.What : $"({undone}) {change.What}", tone);
        }
    }
}

/// <summary>Keys of the history.</summary>
internal static class HistoryKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<HistoryScreen>("enter", "As it stood", "The job sheet as it stood after this change, to look at only.", (s, context) =>
            new Transition(s, AsItStoodScreen.Show(context, s.Counts(context)[s.Selected]))) { Disabled = NoChange },
        new KeyAction<HistoryScreen>("g", "Go to a day", "Goes to the last change of a day.",
            (s, _) => Transition.Type(s, new Entry("Day", "", "such as 2026-03-14, yesterday, or -3", (text, now) => GoTo(s, now, text))))
            { Disabled = NoChange },
        new KeyAction<HistoryScreen>("O", "Other copies", "Looks for other copies of this house, to see and take in what was done there.",
            (s, context) => new Transition(s, CopiesScreen.Find(context))),
        new KeyAction<HistoryScreen>("D", "In conflict", "What two copies disagree about: value against value, to choose which one stays.",
            (s, context) => Transition.Open(s, ConflictsScreen.At(context))),
        OfficeKeys.Opening<HistoryScreen>(),
        Filtering.Key<HistoryScreen>("changes", "what was done, by whom, on which day"),
        .. Moves.Through<HistoryScreen>("change", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Counts(context).Count) }),
    ];

    private static string? NoChange(HistoryScreen s, ScreenContext context) => s.Counts(context).Count == 0 ? "Nothing was done yet." : null;

    private static Result<Transition> GoTo(HistoryScreen s, ScreenContext context, string typed) =>
        HouseFacts.HandoverOn.ReadTyped(typed, context.House, context.Today)
            .Then<Transition>(day => GoTo(s, context, DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture)));

    private static Transition GoTo(HistoryScreen s, ScreenContext context, DateOnly day) => context.Log.CountAt(day) is > 0 and var count
        ? new Transition(s with { Search = "", Selected = context.Log.Changes.Count - count })
        : Transition.Say(s with { Search = "", Selected = context.Log.Changes.Count - 1 }, "Nothing was done by then: this is the first change.");
}
