using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Papers;

/// <summary>What can be written, with a look at it first.</summary>
internal sealed record PapersScreen(int Selected) : IFiltered
{
    public string Title => "Papers";

    public IReadOnlyList<IKeyAction> Keys => PapersKeys.All;

    /// <summary>On the owner's binder, which is what the whole job is for.</summary>
    public static PapersScreen At(ScreenContext context) => new(Math.Max(0, context.Papers.ToList().FindIndex(p => p.Id == "binder")));

    public string Search { get; init; } = "";

    /// <summary>The papers that are shown.</summary>
    public IReadOnlyList<PaperChoice> Shown(ScreenContext context) => Search.Length == 0 ? context.Papers
        : [.. context.Papers.Where(p => Filtering.Fits($"{p.Title} {p.For} {p.Id}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown(context).Count, context.Papers.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown(context), Selected, to.Shown(context), p => p.Id) };
    }

    public IScreen Fit(ScreenContext context) => this with { Selected = Paging.Move(Selected, 0, Shown(context).Count) };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var (missing, unread) = (context.Report.Missing.Length, context.Report.Unread.Length);
        var (titles, readers) = (Cells(context, p => p.Title, area.Width / 2), Cells(context, p => p.For, area.Width / 3));
        var ages = area.Width - titles - readers - 6 >= LeastAge;
        area.PutFit(2, 0, titles, "Paper", Tone.Dim);
        area.PutFit(titles + 3, 0, readers + 4, "For", Tone.Dim);
        if (ages)
            area.PutFit(titles + readers + 6, 0, LeastAge, "Written", Tone.Dim);
        var list = area.Rows(1, area.Height - 1 - Below - (missing + unread > 0 ? 2 : 0));
        var papers = Shown(context);
        foreach (var (y, at) in Paging.Rows(list, papers.Count, Selected, at => this with { Selected = at }))
        {
            var paper = papers[at];
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            list.PutFit(1, y, list.Width - 2, $" {paper.Title}", tone);
            list.PutFit(titles + 3, y, readers + 1, paper.For, tone);
            if (ages)
                list.PutFit(titles + readers + 6, y, list.Width - titles - readers - 7, Age(paper, context), tone);
        }
        var end = 1 + Math.Min(list.Height, papers.Count);
        var below = area.Rows(end, area.Height - end);
        if (Selected < papers.Count)
            below.PutWrapped(1, 1, Below - 1, InWords(papers[Selected], context) + (papers[Selected].OnLabels ? OnWhat(context) : ""), Tone.Text);
        string?[] open =
        [
            missing > 0 ? $"{NumberText.Counted(missing, "check")} could not be made because details are missing" : null,
            unread > 0 ? $"{NumberText.Counted(unread, "passes", "pass")} only by values that nobody checked" : null,
        ];
        if (missing + unread > 0)
            below.PutWrapped(1, Below, 2, $"{string.Join("; ", open.OfType<string>())}. The papers say so.", Tone.Caution);
    }

    private static string OnWhat(ScreenContext context)
    {
        var on = context.Labels.InWords(context.Labels.Chosen ?? LabelSheets.Plain) is { Ok: true } sheet ? sheet.Value : "plain paper";
        return $" On {on}; G chooses another sheet.";
    }

    /// <summary>Lines for the chosen paper.</summary>
    private const int Below = 4;

    /// <summary>"2026-06-01 14:00, may be out of date since 2026-06-02".</summary>
    private const int LeastAge = 52;

    private static int Cells(ScreenContext context, Func<PaperChoice, string> text, int most) =>
        Math.Clamp(context.Papers.Select(p => TextWidth.Of(text(p))).DefaultIfEmpty().Max(), 8, most);

    private static string Age(PaperChoice paper, ScreenContext context) => paper.Written is not { } written ? "not written here yet"
        : context.SinceWritten(paper) is { } since ? string.Create(CultureInfo.InvariantCulture,
            $"{written.At:yyyy-MM-dd HH:mm}, may be out of date since {since.First.SaidAt:yyyy-MM-dd}")
        : string.Create(CultureInfo.InvariantCulture, $"{written.At:yyyy-MM-dd HH:mm}, nothing was changed since");

    /// <summary>When the paper was written, and what it does not have: whether that is about something on it only the paper itself tells.</summary>
    internal static string InWords(PaperChoice paper, ScreenContext context) => paper.Written is not { } written
        ? $"{paper.Title}, for {paper.For}: not written beside this house file yet. w writes it."
        : context.SinceWritten(paper) is { } since ? string.Create(CultureInfo.InvariantCulture,
            $"{paper.Title}: written {written.At:yyyy-MM-dd HH:mm}. It may be out of date since {since.First.SaidAt:yyyy-MM-dd HH:mm}: ")
            + $"{NumberText.Counted(since.Count, "change")} came after it, the first by {since.First.By}: {since.First.What}"
        : string.Create(CultureInfo.InvariantCulture, $"{paper.Title}: written {written.At:yyyy-MM-dd HH:mm}. Nothing was changed since.");
}

/// <summary>Keys of the papers.</summary>
internal static class PapersKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PapersScreen>("enter", "Look at it", "Shows the paper as it will be.",
            (s, context) => new Transition(s, Look(s.Shown(context)[s.Selected], Of(context)))) { Disabled = NoPaper },
        new KeyAction<PapersScreen>("w", "Write it", "Writes the paper beside the house file.",
            (s, context) => new Transition(s, Write(s, [s.Shown(context)[s.Selected]], pdf: false, Of(context), []))) { Disabled = NoPaper },
        new KeyAction<PapersScreen>("A", "As PDF", "Writes the paper as PDF too, printed by a browser of this machine; Esc stops it.",
            (s, context) => new Transition(s, Write(s, [s.Shown(context)[s.Selected]], pdf: true, Of(context), []))) { Disabled = NoPaper },
        new KeyAction<PapersScreen>("W", "Write all", "Writes all papers beside the house file, one after the other; Esc stops between two.",
            (s, context) => new Transition(s, Write(s, context.Papers, pdf: false, Of(context), []))) { Disabled = NoPaper },
        new KeyAction<PapersScreen>("G", "Label sheet", "Chooses the sheet that labels are written for: plain paper to be cut, or rows and columns of labels.",
            (s, context) => Transition.Type(s, Labels(s, context))),
        Filtering.Key<PapersScreen>("papers", "title, or whom it is for"),
        .. Moves.Through<PapersScreen>("paper", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown(context).Count) }),
    ];

    /// <summary>The house as it is seen now: what is changed while papers are written is not on them.</summary>
    public static PaperHouse Of(ScreenContext context) => new(context.Log, () => context.Report, context.Where, context.Today);

    /// <summary>Writes papers, and asks before it writes over what is not as TrimOut wrote it.</summary>
    /// <param name="asked">The screen that asks for it.</param>
    /// <param name="papers">The papers.</param>
    /// <param name="pdf">Whether each is written as PDF too.</param>
    /// <param name="house">What they are written from.</param>
    /// <param name="over">The files that may be written over.</param>
    public static Ask.Beside Write(IScreen asked, IReadOnlyList<PaperChoice> papers, bool pdf, PaperHouse house, ImmutableHashSet<string> over) =>
        new(papers.Count == 1 ? $"Writing {papers[0].Title}" : "Writing all papers", (desk, says, stop) =>
        desk.Write([.. papers.Select(p => p.Id)], pdf, house, says, over, stop).Then<Ask>(came => came.InTheWay is [var first, ..] files
            ? new Ask.Confirm($"{first}{Others(files.Count)} not as TrimOut wrote {(files.Count == 1 ? "it" : "them")}. w writes over " +
                $"{(files.Count == 1 ? "it" : "them")}, any other key leaves all as it is.", "w",
                new Transition(asked, Write(asked, papers, pdf, house, over.Union(files))))
            : new Ask.Say(papers.Count == 1
                ? Written(came.Files)
                : $"Written: {NumberText.Counted(papers.Count, "paper")} in {NumberText.Counted(came.Files.Count, "file")}, in "
                    + $"{Path.GetDirectoryName(came.Files[0])}")));

    private static string Others(int files) => files switch { 1 => " is", 2 => " and 1 more file are", _ => $" and {files - 1} more files are" };

    private static Ask.Beside Look(PaperChoice paper, PaperHouse house) => new($"Making {paper.Title}", (desk, _, stop) =>
        desk.Preview(paper.Id, house, stop).Then<Ask>(blocks => new Ask.Open(PreviewScreen.Of(paper, blocks))));

    private static Entry Labels(PapersScreen s, ScreenContext context) => new("Label sheet", context.Labels.Chosen ?? LabelSheets.Plain,
        "plain, or rows x columns such as 10x3, with letter or a4, and top=, bottom=, left=, right=, across=, down= in millimeters",
        (text, _) => new Transition(s, new Ask.Labels(text)))
    {
        Options = [.. context.Labels.Common.Prepend(LabelSheets.Plain).Select(l => new Core.Facts.Option(l, l))],
        Echo = (text, now) => now.Labels.InWords(text),
    };

    private static string? NoPaper(PapersScreen s, ScreenContext context) => s.Shown(context).Count == 0 ? "There is no paper." : null;

    /// <summary>What to open or print comes first; drawings, which a paper may have many of, are counted.</summary>
    private static string Written(IReadOnlyList<string> files)
    {
        var drawings = files.Count(f => f.EndsWith(".svg", StringComparison.Ordinal));
        var named = files.Where(f => !f.EndsWith(".svg", StringComparison.Ordinal))
            .OrderBy(f => Path.GetExtension(f) switch { ".pdf" => 0, ".html" => 1, _ => 2 });
        var counted = drawings == 0 ? "" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $" and {drawings} drawings");
        return $"Written: {string.Join(", ", named)}{counted}";
    }
}
