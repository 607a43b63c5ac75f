using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Papers;

/// <summary>What can be written, with a look at it first.</summary>
internal sealed record PapersScreen(int Selected) : IScreen
{
    public string Title => "Papers";

    public IReadOnlyList<IKeyAction> Keys => PapersKeys.All;

    /// <summary>On the owner's binder, which is what the whole job is for.</summary>
    public static PapersScreen At(Sight sight) => new(Math.Max(0, sight.Papers.ToList().FindIndex(p => p.Id == "binder")));

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        for (var y = 0; y < sight.Papers.Count && y + 1 < area.Height; y++)
        {
            var paper = sight.Papers[y];
            var tone = y == Selected ? Tone.Selected : Tone.Text;
            area.PutFit(1, y + 1, area.Width - 2, $" {paper.Title}", tone);
            area.PutFit(area.Width / 2, y + 1, area.Width - area.Width / 2 - 1, $"for {paper.For}", tone);
        }
        var missing = sight.Report.Missing.Length;
        if (missing > 0)
            area.PutWrapped(1, sight.Papers.Count + 2, 2, $"{missing} checks could not be made for want of facts. The papers say so.", Tone.Caution);
    }
}

/// <summary>Keys of the papers.</summary>
internal static class PapersKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PapersScreen>("enter", "Look at it", "Shows the paper.", (s, sight) =>
            sight.Papers[s.Selected] is var paper ? new Turn(s, new Ask.Look(d => PreviewScreen.Of(paper, d.Preview(paper.Id, sight.House, sight.Today)))) : new Turn(s)) { Disabled = NoPaper },
        new KeyAction<PapersScreen>("w", "Write it", "Writes the paper beside the house file.", (s, sight) => Write(s, sight.Papers[s.Selected].Id)) { Disabled = NoPaper },
        .. Moves.Through<PapersScreen>("paper", (s, sight, by) => s with { Selected = Paging.Move(s.Selected, by, sight.Papers.Count) }),
    ];

    public static Turn Write(IScreen screen, string paper) => new(screen, new Ask.Write(paper));

    private static string? NoPaper(PapersScreen s, Sight sight) => sight.Papers.Count == 0 ? "There is no paper." : null;
}

/// <summary>A paper as it will be, in plain text.</summary>
internal sealed record PreviewScreen(PaperChoice Paper, IReadOnlyList<string> Lines, int Top) : IScreen
{
    public string Title => Paper.Title;

    public IReadOnlyList<IKeyAction> Keys => PreviewKeys.All;

    public static PreviewScreen Of(PaperChoice paper, string markdown) => new(paper, markdown.Split('\n'), 0);

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        var y = 0;
        foreach (var line in Lines.Skip(Top))
        {
            if (y >= area.Height)
                break;
            var heading = line.StartsWith('#');
            if (line.StartsWith('|'))
                area.PutFit(1, y++, area.Width - 2, line);
            else if (line.Length == 0)
                y++;
            else
                y = area.Part(0, 0, area.Width - 1, area.Height).PutWrapped(1, y, area.Height - y, heading ? line.TrimStart('#', ' ') : line, heading ? Tone.Heading : Tone.Text);
        }
    }

    internal PreviewScreen Scroll(int by) => this with { Top = Math.Clamp(Top + by, 0, Math.Max(0, Lines.Count - 1)) };
}

/// <summary>Keys of a paper that is looked at.</summary>
internal static class PreviewKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PreviewScreen>("w", "Write it", "Writes the paper beside the house file.", (s, _) => PapersKeys.Write(s, s.Paper.Id)),
        new KeyAction<PreviewScreen>("space", "Page down", "A page down.", (s, _) => new Turn(s.Scroll(18))),
        .. Moves.Through<PreviewScreen>("line", (s, _, by) => s.Scroll(by)),
    ];
}
