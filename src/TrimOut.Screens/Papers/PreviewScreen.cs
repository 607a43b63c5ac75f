using TrimOut.Core.Units;
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
        (area, var card) = Wide.Split(area, context.Glyphs);
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
        if (card is { } beside)
            DrawContents(beside, top, context);
    }

    /// <summary>Whom the paper is for and when it was written, and below that its headings, the one that is read now marked.</summary>
    private void DrawContents(Area area, int top, ScreenContext context)
    {
        var paper = context.Papers.FirstOrDefault(p => p.Id == Paper.Id) ?? Paper;
        var y = area.PutWrapped(0, 0, 5, PapersScreen.InWords(paper, context), Tone.Text);
        area.PutFit(0, y + 1, area.Width, $"Line {NumberText.Plain(top + 1)} of {NumberText.Plain(Pages.Count)}", Tone.Dim);
        var headings = Pages.Headings;
        var read = Math.Max(0, headings.Count(h => h.Line <= top) - 1);
        var list = area.Rows(y + 3, area.Height - y - 3);
        foreach (var (line, at) in Paging.Rows(list, headings.Count, read, at => this with { Top = headings[at].Line }))
        {
            var indent = 2 * Math.Min(3, headings[at].Level - 1);
            list.PutFit(0, line, list.Width, new string(' ', indent) + headings[at].Text, at == read ? Tone.Selected : Tone.Text);
        }
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
            (s, context) => new Transition(s, PapersKeys.Write(s, [s.Paper], pdf: false, PapersKeys.Of(context), []))),
        new KeyAction<PreviewScreen>("A", "As PDF", "Writes the paper as PDF too, printed by a browser of this machine; Esc stops it.",
            (s, context) => new Transition(s, PapersKeys.Write(s, [s.Paper], pdf: true, PapersKeys.Of(context), []))),
        new KeyAction<PreviewScreen>("space", "Page down", "A page down.", (s, _) => new Transition(s.Scroll(18))),
        new KeyAction<PreviewScreen>("right", "Next heading", "To the next heading.", (s, _) => new Transition(s with { Top = s.Pages.HeadingAfter(s.Top) })),
        .. Moves.Through<PreviewScreen>("line", (s, _, by) => s.Scroll(by)),
    ];
}
