using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Copies;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Office;

/// <summary>Where the house stands with the office: when the two last exchanged, and which changes are not there yet.</summary>
internal sealed record OfficeScreen(int Selected) : IFiltered, ITable
{
    private const int When = 17;
    private const int Who = 12;

    public string Title => "Office";

    public IReadOnlyList<IKeyAction> Keys => OfficeKeys.All;

    public string Search { get; init; } = "";

    public (int Shown, int All) Count(ScreenContext context) => (Rows(context).Count, All(context).Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Rows(context), Selected, to.Rows(context), c => c.Id) };
    }

    /// <summary>The changes that are not yet at the office and are shown, the latest first.</summary>
    public IReadOnlyList<Change> Rows(ScreenContext context) => Search.Length == 0 ? All(context)
        : [.. All(context).Where(c => Filtering.Fits($"{c.SaidAt:yyyy-MM-dd} {c.By} {c.What}", Search))];

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Rows(context).Select(c => (IReadOnlyList<string>)[At(c), c.By, c.What]);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        if (context.Office is not { } office)
        {
            area.PutWrapped(1, 0, 4, "This laptop is not enrolled at an office. All that you save is in the house file, as ever; docs/office.md tells how an "
                + "office is set up and how this laptop gets its credentials file.", Tone.Text);
            return;
        }
        var y = area.PutWrapped(1, 0, 2, office.InWords, office is { NotYetThere.Count: 0, PutOff: 0 } ? Tone.Strong : Tone.Caution);
        y = area.PutWrapped(1, y + 1, 3, "Enter sends what the office lacks and fetches what was done elsewhere, beside your work; Esc stops it. What came is "
            + "shown before it is taken in. Without a network nothing is lost: it all goes the next time.", Tone.Dim);
        var list = area.Rows(y + 1, area.Height - y - 1);
        var rows = Rows(context);
        foreach (var (line, at) in Paging.Rows(list, rows.Count, Selected, at => this with { Selected = at }))
        {
            var (change, tone) = (rows[at], at == Selected ? Tone.Selected : Tone.Text);
            list.PutFit(0, line, list.Width, "", tone);
            list.PutFit(1, line, When, At(change), tone);
            list.PutFit(When + 1, line, Who, change.By, tone);
            list.PutFit(When + Who + 2, line, list.Width - When - Who - 2, change.What, tone);
        }
    }

    private static IReadOnlyList<Change> All(ScreenContext context) => context.Office?.NotYetThere ?? [];

    private static string At(Change change) => change.SaidAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}

/// <summary>Keys of the office.</summary>
internal static class OfficeKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<OfficeScreen>("enter", "Exchange", "Sends what the office lacks and fetches what was done elsewhere; Esc stops it.",
            (s, context) => new Transition(s, Exchange(context)))
            { Disabled = (_, context) => context.Office is null ? "This laptop is not enrolled at an office." : null },
        Filtering.Key<OfficeScreen>("changes", "what was done, by whom, on which day"),
        .. Moves.Through<OfficeScreen>("change", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Rows(context).Count) }),
    ];

    /// <summary>The key that opens it.</summary>
    public static IKeyAction Opening<T>() where T : IScreen => new KeyAction<T>("@", "Office",
        "When this house was last exchanged with the office, and what is not there yet; Enter there exchanges.",
        (s, _) => Transition.Open(s, new OfficeScreen(0)))
    {
        OnBar = false,
    };

    /// <summary>Exchanges beside the keys. What came is looked at like any other copy.</summary>
    private static Ask.Beside Exchange(ScreenContext context) => new("Exchanging with the office", (desk, says, stop) =>
        desk.Exchange(context.Log, says, stop).Then<Ask>(done => done.Merge is { } merge
            ? new Ask.Open(Looked(context.Log, merge, done.NotSent > 0 ? [Stayed(done.NotSent)] : []))
            : new Ask.Say(done.NotSent > 0 ? $"{Stayed(done.NotSent)} Nothing new came." : done.Sent == 0 ? "The office and this house have the same changes."
                : $"Sent to the office: {NumberText.Counted(done.Sent, "change")}. Nothing new came.")));

    private static MergeScreen Looked(HouseLog mine, Merge merge, IReadOnlyList<string> remarks) =>
        MergeScreen.Of(mine, new CopyRead(merge.Merged, remarks), merge, "the office") with { PutOff = PutOff };

    private const string PutOff = "Nothing was taken in: it is put off, and the top line says so until it is. @ says when, and Enter there fetches it again.";

    private static string Stayed(int changes) =>
        $"This laptop may only read this house at the office: nothing was sent, and {NumberText.Counted(changes, "change")} stayed here.";
}
