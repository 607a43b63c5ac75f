namespace TrimOut.Screens.Shell;

/// <summary>The keys that move through a list, the same on every screen.</summary>
internal static class Moves
{
    /// <summary>The keys themselves.</summary>
    public static readonly IReadOnlySet<string> Strokes = new HashSet<string> { "down", "up", "left", "right", "pagedown", "pageup", "home", "end" };

    /// <param name="of">What the list is of, in the singular: "unit".</param>
    /// <param name="move">The screen after a move by so many rows.</param>
    public static IReadOnlyList<IKeyAction> Through<T>(string of, Func<T, ScreenContext, int, T> move)
        where T : IScreen =>
    [
        Move("down", "Down", $"The next {of}.", 1, move),
        Move("up", "Up", $"The {of} before.", -1, move),
        .. Farther(of, move),
    ];

    /// <summary>The keys that move by more than one, where the arrow keys go through something finer.</summary>
    /// <param name="of">What the list is of, in the singular.</param>
    /// <param name="move">The screen after a move by so many rows.</param>
    public static IReadOnlyList<IKeyAction> Farther<T>(string of, Func<T, ScreenContext, int, T> move)
        where T : IScreen =>
    [
        Move("pagedown", "Page down", $"Ten {Several(of)} on.", 10, move),
        Move("pageup", "Page up", $"Ten {Several(of)} back.", -10, move),
        Move("home", "First", $"The first {of}.", -1_000_000, move),
        Move("end", "Last", $"The last {of}.", 1_000_000, move),
    ];

    private static KeyAction<T> Move<T>(string stroke, string name, string help, int by, Func<T, ScreenContext, int, T> move)
        where T : IScreen => new(stroke, name, help, (s, context) => new Transition(move(s, context, by))) { OnBar = false };

    private static string Several(string of) => of.EndsWith('x') ? of + "es" : of + "s";
}
