using TrimOut.Core.Figures;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Figures;

/// <summary>Workings: each with its formula, its inputs and its source, as a finding shows them.</summary>
internal sealed record FiguresScreen(string Of, IReadOnlyList<Figure> Figures, int Selected) : IScreen
{
    public string Title => $"Figures of {Of}";

    public IReadOnlyList<IKeyAction> Keys => FiguresKeys.All;

    public static FiguresScreen For(AskedFigures asked) => new(asked.Of,
        asked.At is { } fact ? [.. asked.All.Where(f => f.IsAbout(fact)), .. asked.All.Where(f => !f.IsAbout(fact))] : asked.All, 0);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var detail = Math.Min(area.Height / 2, 14);
        var list = area.Rows(0, area.Height - detail);
        var names = Math.Clamp(Figures.Max(f => TextWidth.Of(f.Name)), 12, area.Width / 2);
        foreach (var (y, at) in Paging.Rows(list, Figures.Count, Selected))
        {
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            list.PutFit(0, y, list.Width, "", tone);
            list.PutFit(1, y, names, Figures[at].Name, tone);
            list.PutFit(names + 3, y, list.Width - names - 3, Figures[at].Value, tone);
        }
        DrawDetail(area.Rows(area.Height - detail, detail), Figures[Selected], context);
    }

    private static void DrawDetail(Area area, Figure figure, ScreenContext context)
    {
        for (var x = 0; x < area.Width; x++)
            area.Put(x, 0, context.Glyphs.Across, Tone.Dim);
        var y = area.PutWrapped(1, 1, 3, $"{figure.Name}: {figure.Value}", Tone.Strong);
        y = area.PutWrapped(1, y, 3, figure.Working.Formula, Tone.Text);
        y = area.PutWrapped(3, y, Math.Max(1, area.Height - y - 2), string.Join("; ", figure.Working.Inputs.Select(i => $"{i.Name} {i.Value}")), Tone.Text);
        area.PutWrapped(1, Math.Min(y, area.Height - 1), 2, figure.Source.Title, Tone.Dim);
    }
}

/// <summary>Keys of the figures.</summary>
internal static class FiguresKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        .. Moves.Through<FiguresScreen>("figure", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Figures.Count) }),
    ];
}
