using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Help;

/// <summary>The keys of the screen below it, from the table that binds them.</summary>
internal sealed record HelpScreen(string Of, IReadOnlyList<(string Keys, string Name, string Help)> Lines, int Top) : IFiltered
{
    private const string SignsHere = "Signs here";

    private const int MostLines = 3;

    private ScrollEnd End { get; } = new();

    public string Title => $"Keys of {Of}";

    public IReadOnlyList<IKeyAction> Keys => HelpKeys.All;

    public string Search { get; init; } = "";

    /// <summary>The lines that are shown; no heading stands above some of them.</summary>
    private IReadOnlyList<(string Keys, string Name, string Help)> Shown => Search.Length == 0 ? Lines
        : [.. Lines.Where(l => l.Help.Length > 0 && Filtering.Fits($"{l.Keys} {l.Name} {l.Help}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count(l => l.Help.Length > 0), Lines.Count(l => l.Help.Length > 0));

    public IScreen Searching(string search, ScreenContext context) => this with { Search = search, Top = 0 };

    public static HelpScreen For(ShellState shell)
    {
        var lines = shell.Actions.Select(a => (string.Join(" ", a.Action.Strokes.Select(KeyNames.Shown)), a.Action.Name, a.Action.Help)).ToList();
        var signs = shell.Screen.Signs.Select(s => (s.Drawn(shell.Glyphs), "", s.Means)).ToList();
        if (signs.Count > 0)
            lines.InsertRange(shell.Screen.Keys.Count, [("", SignsHere, ""), .. signs, ("", "On every screen", "")]);
        return new(shell.Screen.Title, lines, 0);
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        area.Put(1, 0, "While something is typed: Enter takes it, Esc leaves it as it was.", Tone.Dim);
        var lines = Shown;
        if (lines.Any(l => l.Name == SignsHere))
            area.Put(1, 1, "What the signs mean stands below the keys.", Tone.Dim);
        var rows = area.Rows(2, area.Height - 3);
        var nameAt = 2 + Lines.Max(l => TextWidth.Of(l.Keys)) + 1;
        var helpAt = nameAt + Lines.Max(l => TextWidth.Of(l.Name)) + 2;
        int TextAt((string Keys, string Name, string Help) line) => line.Name.Length == 0 ? nameAt : helpAt;
        int LinesOf((string Keys, string Name, string Help) line) =>
            line.Help.Length == 0 ? 1 : Math.Clamp(TextWidth.Wrap(line.Help, rows.Width - TextAt(line)).Count(), 1, MostLines);
        var top = End.Shown(Top, lines.Reverse().Select(LinesOf), lines.Count, rows.Height);
        var (y, shown) = (0, 0);
        foreach (var line in lines.Skip(top).TakeWhile(_ => y < rows.Height))
        {
            shown++;
            rows.Put(1, y, line.Keys, Tone.Strong);
            rows.Put(nameAt, y, line.Name, Tone.Heading);
            y = line.Help.Length == 0 ? y + 1 : rows.PutWrapped(TextAt(line), y, MostLines, line.Help);
        }
        area.PutFit(1, area.Height - 1, area.Width - 1, Paging.Beyond(top, lines.Count - top - shown, "above", "below"), Tone.Dim);
    }

    internal HelpScreen Scroll(int by) => this with { Top = End.Move(Top, by) };
}

/// <summary>Keys of the help.</summary>
internal static class HelpKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        Filtering.Key<HelpScreen>("lines", "key, name, or what it does"),
        .. Moves.Through<HelpScreen>("line", (s, _, by) => s.Scroll(by)),
    ];
}
