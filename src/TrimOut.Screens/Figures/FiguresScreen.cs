using TrimOut.Core.Figures;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Figures;

/// <summary>Workings: each with its formula, its inputs and its source, as a finding shows them.</summary>
internal sealed record FiguresScreen(string Of, IReadOnlyList<Figure> Figures, int Selected) : IFiltered, ITable
{
    public string Title => $"Figures of {Of}";

    public IReadOnlyList<IKeyAction> Keys => FiguresKeys.All;

    public string Search { get; init; } = "";

    /// <summary>The figures that are shown.</summary>
    public IReadOnlyList<Figure> Shown => Search.Length == 0 ? Figures
        : [.. Figures.Where(f => Filtering.Fits($"{f.Name} {f.Value} {f.Source.Title}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count, Figures.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown, Selected, to.Shown, f => f) };
    }

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        Shown.Select(f => (IReadOnlyList<string>)[f.Name, f.Value, f.Working.Formula, f.Source.Title, f.ByUnchecked ?? ""]);

    public static FiguresScreen For(AskedFigures asked) => new(asked.Of,
        asked.At is { } fact ? [.. asked.All.Where(f => f.IsAbout(fact)), .. asked.All.Where(f => !f.IsAbout(fact))] : asked.All, 0);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var figures = Shown;
        if (figures.Count == 0)
            return;
        var (whole, card) = Wide.Split(area, context.Glyphs);
        var detail = card is null ? Math.Min(area.Height / 2, 14) : 0;
        var list = whole.Rows(0, whole.Height - detail);
        var names = Math.Clamp(Figures.Max(f => TextWidth.Of(f.Name)), 12, list.Width / 2);
        foreach (var (y, at) in Paging.Rows(list, figures.Count, Selected, at => this with { Selected = at }))
        {
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            list.PutFit(0, y, list.Width, "", tone);
            list.PutFit(1, y, names, figures[at].Name, tone);
            list.PutFit(names + 3, y, list.Width - names - 3, figures[at].Value, tone);
        }
        if (card is { } beside)
        {
            DrawDetail(beside, figures[Selected]);
            return;
        }
        for (var x = 0; x < area.Width; x++)
            area.Put(x, area.Height - detail, context.Glyphs.Across, Tone.Dim);
        DrawDetail(area.Rows(area.Height - detail, detail), figures[Selected]);
    }

    private static void DrawDetail(Area area, Figure figure)
    {
        var lines = Math.Max(3, area.Height / 4);
        var y = area.PutWrapped(1, 1, lines, $"{figure.Name}: {figure.Value}", Tone.Strong);
        y = area.PutWrapped(1, y, lines, figure.Working.Formula, Tone.Text);
        var inputs = string.Join("; ", figure.Working.Inputs.Select(i => $"{i.Name} {i.Value}"));
        var open = !figure.Unchecked.IsEmpty;
        var source = figure.Source.Title
            + (open ? $"; maker's sheet, not checked by anyone: {string.Join(", ", figure.Unchecked.Select(f => f.Label))}" : "");
        var below = Math.Clamp(TextWidth.Wrap(source, area.Width - 1).Count(), 1, 3);
        y = area.PutWrapped(3, y, Math.Max(1, area.Height - y - below), inputs, Tone.Text);
        area.PutWrapped(1, Math.Min(y, area.Height - 1), below, source, open ? Tone.Caution : Tone.Dim);
    }
}

/// <summary>Keys of the figures.</summary>
internal static class FiguresKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        Filtering.Key<FiguresScreen>("figures", "name, value or source"),
        .. Moves.Through<FiguresScreen>("figure", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown.Count) }),
    ];
}
