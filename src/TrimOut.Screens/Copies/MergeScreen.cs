using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Copies;

/// <summary>What would come in from another copy: changes with who and when, values that they change here, and what the two then disagree about.</summary>
/// <param name="From">The copy.</param>
/// <param name="Merge">The two together.</param>
/// <param name="Only">How many changes only this house has.</param>
/// <param name="Lists">The lists, each with its name; the first is the one of changes.</param>
/// <param name="Remarks">What is to be said about how the copy was found.</param>
/// <param name="Shown">The list that is shown.</param>
/// <param name="Selected">The row under the cursor.</param>
internal sealed record MergeScreen(string From, Merge Merge, int Only, ImmutableArray<MergeList> Lists, ImmutableArray<string> Remarks, int Shown, int Selected)
    : IFiltered, ITable
{
    private const int Detail = 4;

    public string Title => "What would come in";

    public IReadOnlyList<IKeyAction> Keys => MergeKeys.All;

    public MergeList List => Lists[Shown];

    public string Search { get; init; } = "";

    /// <summary>What is said where it is not taken in now; null where that leaves nothing to come back to.</summary>
    public string? PutOff { get; init; }

    /// <summary>The rows of the list that are shown.</summary>
    public IReadOnlyList<MergeRow> Rows => Search.Length == 0 ? List.Rows
        : [.. List.Rows.Where(r => Filtering.Fits($"{r.First} {r.Second} {r.Third}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Rows.Count, List.Rows.Length);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Rows, Selected, to.Rows, r => r) };
    }

    /// <summary>The look at a copy. Holds every value against every other: called beside the keys.</summary>
    public static MergeScreen Of(HouseLog mine, CopyRead copy, Merge merge, string path) => new(path, merge,
        merge.Merged.Changes.Count - copy.Log.Changes.Count,
        [
            new("change", "changes", [.. merge.New.Reverse().Select(c =>
                new MergeRow(c.SaidAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), c.By, c.What))]),
            new("value changes", "values change", [.. Difference.Between(mine, merge.Merged).Values.Select(v => new MergeRow(v.What, v.Here, v.There))]),
            new("in conflict", "in conflict", [.. merge.Conflicts.Select(c => new MergeRow(c.About, string.Join("; ", c.Ways.Select(w => w.Says)), ""))]),
        ],
        [.. copy.Remarks], 0, 0);

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Rows.Select(r => (IReadOnlyList<string>)[r.First, r.Second, r.Third]);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var by = string.Join(", ", Merge.New.GroupBy(c => c.By).Select(g => $"{NumberText.Plain(g.Count())} by {g.Key}"));
        var y = area.PutWrapped(1, 0, 2, Merge.New.IsEmpty
            ? "Nothing would come in: this house has every change of that copy."
            : $"{NumberText.Counted(Merge.New.Length, "change")} would come in ({by}). Enter takes all of it in; nothing was changed yet.", Tone.Strong);
        y = area.PutWrapped(1, y, 2, $"From {From}. {NumberText.Counted(Only, "change")} of this house {(Only == 1 ? "is" : "are")} not in it.", Tone.Dim);
        foreach (var remark in Remarks.Take(3))
            y = area.PutWrapped(1, y, 3, remark, Tone.Caution);
        var x = 1;
        foreach (var (list, at) in Lists.Select((l, at) => (l, at)))
        {
            var from = x;
            var tone = at == Shown ? Tone.Selected : list == Lists[^1] && list.Rows.Length > 0 ? Tone.Caution : Tone.Text;
            x = area.Put(x, y, $" {NumberText.Counted(list.Rows.Length, list.One, list.Several)} ", tone) + 1;
            area.PutSpot(from, y, x - from, false, () => this with { Shown = at, Selected = 0 });
        }
        DrawList(area.Rows(y + 1, area.Height - y - 1 - Detail), context);
        var detail = area.Rows(area.Height - Detail, Detail);
        for (var column = 0; column < detail.Width; column++)
            detail.Put(column, 0, context.Glyphs.Across, Tone.Dim);
        if (Rows is var shown && Selected < shown.Count)
            detail.PutWrapped(1, 1, Detail - 1, InWords(shown[Selected], context), Tone.Text);
    }

    private void DrawList(Area list, ScreenContext context)
    {
        var rows = Rows;
        if (List.Rows.IsEmpty)
        {
            list.Put(1, 0, $"{(Shown == 2 ? "Nothing" : "No")} {List.One}.", Tone.Dim);
            return;
        }
        foreach (var (line, at) in Paging.Rows(list, rows.Count, Selected, at => this with { Selected = at }))
        {
            var (row, tone) = (rows[at], at == Selected ? Tone.Selected : Tone.Text);
            var (first, second) = Shown == 0 ? (17, 12) : (list.Width * 2 / 5, list.Width / 4);
            list.PutFit(0, line, list.Width, "", tone);
            list.PutFit(1, line, first - 1, row.First, tone);
            list.PutFit(first + 1, line, row.Third.Length == 0 ? list.Width - first - 1 : second, row.Second, tone);
            if (row.Third.Length > 0)
                list.PutFit(first + second + 2, line, list.Width - first - second - 2, Shown == 0 ? row.Third : $"{context.Glyphs.Arrow} {row.Third}", tone);
        }
    }

    private string InWords(MergeRow row, ScreenContext context) => Shown switch
    {
        0 => $"{row.First}, {row.Second}: {row.Third}",
        1 => $"{row.First}: {row.Second} here, {context.Glyphs.Arrow} {row.Third} when the copy is taken in",
        _ => $"{row.First} {row.Second}",
    };
}

/// <summary>One of the lists of what would come in.</summary>
/// <param name="One">What it lists, behind one.</param>
/// <param name="Several">The same behind another number.</param>
/// <param name="Rows">Its rows.</param>
internal sealed record MergeList(string One, string Several, ImmutableArray<MergeRow> Rows);

/// <summary>A row: when, who, what; or which value, what it is here, what it becomes; or what is in conflict, and the ways out.</summary>
internal sealed record MergeRow(string First, string Second, string Third);

/// <summary>Keys of what would come in.</summary>
internal static class MergeKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<MergeScreen>("enter", "Take", "Takes all of it into this house, after a question; undo takes it back.", (s, _) =>
            new Transition(s, new Ask.Confirm($"Take in {NumberText.Counted(s.Merge.New.Length, "change")}? y takes them in (undo takes them back), "
                + "any other key leaves this house as it is.", Ask.Confirm.AlsoYes, new Transition(s, new Ask.TakeIn(s.Merge, s.From)))
            {
                OnNo = s.PutOff is { } putOff ? Transition.Say(s, putOff) : null,
            }))
            { Disabled = NotBecause },
        new KeyAction<MergeScreen>("right", "Next list", "Changes, then values that change, then what is in conflict.", (s, _) => new Transition(Turned(s, 1))),
        new KeyAction<MergeScreen>("left", "List before", "The list before.", (s, _) => new Transition(Turned(s, -1))) { OnBar = false },
        Filtering.Key<MergeScreen>("rows", "when, who, what, or which value"),
        .. Moves.Through<MergeScreen>("row", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Rows.Count) }),
    ];

    private static string? NotBecause(MergeScreen s, ScreenContext context) => s.Merge.New.IsEmpty ? "Nothing would come in from this copy."
        : context.ReadOnlyBecause is { } why ? $"This house is open for reading only: {why}" : null;

    private static MergeScreen Turned(MergeScreen s, int by) => s with { Shown = (s.Shown + by + s.Lists.Length) % s.Lists.Length, Selected = 0 };
}
