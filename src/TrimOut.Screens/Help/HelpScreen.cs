using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Help;

/// <summary>The keys of the screen below it, from the table that binds them.</summary>
internal sealed record HelpScreen(string Of, IReadOnlyList<(string Keys, string Name, string Help)> Lines, int Top) : IScreen
{
    private const string SignsHere = "Signs here";

    private const int MostLines = 3;

    private ScrollEnd End { get; } = new();

    public string Title => $"Keys of {Of}";

    public IReadOnlyList<IKeyAction> Keys => HelpKeys.All;

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
        if (Lines.Any(l => l.Name == SignsHere))
            area.Put(1, 1, "What the signs mean stands below the keys.", Tone.Dim);
        var rows = area.Rows(2, area.Height - 3);
        var nameAt = 2 + Lines.Max(l => TextWidth.Of(l.Keys)) + 1;
        var helpAt = nameAt + Lines.Max(l => TextWidth.Of(l.Name)) + 2;
        int TextAt((string Keys, string Name, string Help) line) => line.Name.Length == 0 ? nameAt : helpAt;
        int LinesOf((string Keys, string Name, string Help) line) =>
            line.Help.Length == 0 ? 1 : Math.Clamp(TextWidth.Wrap(line.Help, rows.Width - TextAt(line)).Count(), 1, MostLines);
        var top = End.Shown(Top, Lines.Reverse().Select(LinesOf), Lines.Count, rows.Height);
        var (y, shown) = (0, 0);
        foreach (var line in Lines.Skip(top).TakeWhile(_ => y < rows.Height))
        {
            shown++;
            rows.Put(1, y, line.Keys, Tone.Strong);
            rows.Put(nameAt, y, line.Name, Tone.Heading);
            y = line.Help.Length == 0 ? y + 1 : rows.PutWrapped(TextAt(line), y, MostLines, line.Help);
        }
        area.PutFit(1, area.Height - 1, area.Width - 1, Paging.Beyond(top, Lines.Count - top - shown, "above", "below"), Tone.Dim);
    }

    internal HelpScreen Scroll(int by) => this with { Top = End.Move(Top, by) };
}

/// <summary>Keys of the help.</summary>
internal static class HelpKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        .. Moves.Through<HelpScreen>("line", (s, _, by) => s.Scroll(by)),
    ];
}
