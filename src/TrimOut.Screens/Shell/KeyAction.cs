namespace TrimOut.Screens.Shell;

/// <summary>A key of a screen with its help: the one table that keys, bottom line, help and docs/keys.md come from.</summary>
internal interface IKeyAction
{
    /// <summary>The key, and other keys that do the same, as written in help: "enter", "space", "u", "?", "ctrl+p".</summary>
    IReadOnlyList<string> Strokes { get; }

    /// <summary>One or two words.</summary>
    string Name { get; }

    /// <summary>One sentence.</summary>
    string Help { get; }

    /// <summary>Whether the bottom line shows it.</summary>
    bool OnBar { get; }

    /// <summary>Why it can't be used now; null when it can.</summary>
    string? DisabledBecause(IScreen screen, ScreenContext context);

    /// <summary>What comes of it.</summary>
    Transition Press(IScreen screen, ScreenContext context);
}

/// <summary>A key of one sort of screen.</summary>
internal sealed record KeyAction<T>(string Stroke, string Name, string Help, Func<T, ScreenContext, Transition> Do) : IKeyAction
    where T : IScreen
{
    public string[] Also { get; init; } = [];

    public bool OnBar { get; init; } = true;

    public Func<T, ScreenContext, string?>? Disabled { get; init; }

    public IReadOnlyList<string> Strokes => [Stroke, .. Also];

    public string? DisabledBecause(IScreen screen, ScreenContext context) => Disabled?.Invoke((T)screen, context);

    public Transition Press(IScreen screen, ScreenContext context) => Do((T)screen, context);
}
