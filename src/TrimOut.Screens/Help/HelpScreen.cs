using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Help;

/// <summary>The keys of the screen below it, from the table that binds them.</summary>
internal sealed record HelpScreen(string Of, IReadOnlyList<(string Keys, string Name, string Help)> Lines, int Top) : IScreen
{
    public string Title => $"Keys of {Of}";

    public IReadOnlyList<IKeyAction> Keys => HelpKeys.All;

    public static HelpScreen For(ShellState shell) => new(shell.Screen.Title,
        [.. shell.Actions.Select(a => a.Action).Select(a => (string.Join(" ", a.Strokes.Select(KeyNames.Shown)), a.Name, a.Help))], 0);

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        area.Put(1, 0, "While something is typed: Enter takes it, Esc leaves it as it was.", Tone.Dim);
        var rows = area.Rows(2, area.Height - 2);
        var nameAt = 2 + Lines.Max(l => TextWidth.Of(l.Keys)) + 1;
        var helpAt = nameAt + Lines.Max(l => TextWidth.Of(l.Name)) + 2;
        var y = 0;
        foreach (var line in Lines.Skip(Top))
        {
            rows.Put(1, y, line.Keys, Tone.Strong);
            rows.Put(nameAt, y, line.Name, Tone.Heading);
            y = rows.PutWrapped(helpAt, y, 3, line.Help);
        }
    }

    internal HelpScreen Scroll(int by) => this with { Top = Math.Clamp(Top + by, 0, Math.Max(0, Lines.Count - 1)) };
}

/// <summary>Keys of the help.</summary>
internal static class HelpKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        .. Moves.Through<HelpScreen>("line", (s, _, by) => s.Scroll(by)),
    ];
}
