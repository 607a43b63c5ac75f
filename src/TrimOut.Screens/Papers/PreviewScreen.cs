using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Papers;

/// <summary>A paper as it will be: headings, lists and tables in character cells.</summary>
internal sealed record PreviewScreen(PaperChoice Paper, PreviewPages Pages, int Top) : IScreen
{
    public string Title => Paper.Title;

    public IReadOnlyList<IKeyAction> Keys => PreviewKeys.All;

    private ScrollEnd End { get; } = new();

    public static PreviewScreen Of(PaperChoice paper, IReadOnlyList<PreviewBlock> blocks) => new(paper, new PreviewPages(blocks), 0);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var lines = Pages.Lines(area.Width - 3, context.Glyphs);
        var top = End.Shown(Top, Enumerable.Repeat(1, lines.Count), lines.Count, area.Height);
        for (var y = 0; y < area.Height && top + y < lines.Count; y++)
        {
            var x = 1;
            foreach (var (text, tone) in lines[top + y])
                x = area.Put(x, y, text, tone);
        }
        var bar = Math.Max(1, area.Height * area.Height / Math.Max(area.Height, lines.Count));
        var at = lines.Count <= area.Height ? 0 : Math.Min(area.Height - bar, top * (area.Height - bar) / (lines.Count - area.Height));
        for (var y = 0; lines.Count > area.Height && y < bar; y++)
            area.Put(area.Width - 1, at + y, context.Glyphs.Solid, Tone.Dim);
    }

    /// <summary>The screen further down or up: not past the last page as it was laid out last.</summary>
    internal PreviewScreen Scroll(int by) => this with { Top = End.Move(Top, by) };
}

/// <summary>Keys of a paper that is looked at.</summary>
internal static class PreviewKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PreviewScreen>("w", "Write it", "Writes the paper beside the house file.",
            (s, context) => new Transition(s, PapersKeys.Write(s, [s.Paper], PapersKeys.Of(context), []))),
        new KeyAction<PreviewScreen>("space", "Page down", "A page down.", (s, _) => new Transition(s.Scroll(18))),
        new KeyAction<PreviewScreen>("right", "Next heading", "To the next heading.", (s, _) => new Transition(s with { Top = s.Pages.HeadingAfter(s.Top) })),
        .. Moves.Through<PreviewScreen>("line", (s, _, by) => s.Scroll(by)),
    ];
}
