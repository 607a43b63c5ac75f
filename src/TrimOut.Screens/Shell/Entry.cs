using TrimOut.Core;
using TrimOut.Core.Facts;

namespace TrimOut.Screens.Shell;

/// <summary>A line of text that is being asked for.</summary>
/// <param name="Label">What is asked for.</param>
/// <param name="Initial">What stands in the field at first.</param>
/// <param name="Hint">What may be typed.</param>
/// <param name="Accept">What comes of the text, or why it can't be taken; then it stays to be fixed.</param>
internal sealed record Entry(string Label, string Initial, string Hint, Func<string, ScreenContext, Result<Transition>> Accept)
{
    /// <summary>What it may be, when that is a list: the arrow keys walk through it.</summary>
    public IReadOnlyList<Option> Options { get; init; } = [];

    /// <summary>What comes of the text when the next field is wanted at once; null where there is no next.</summary>
    public Func<string, ScreenContext, Result<Transition>>? AcceptAndNext { get; init; }

    /// <summary>What is understood of the text so far, or why it can't be taken; null when there is nothing to say.</summary>
    public Func<string, ScreenContext, Result<string>>? Echo { get; init; }

    /// <summary>The house as the text so far would leave it, for screens that show it while one types.</summary>
    public Func<string, ScreenContext, ScreenContext>? Preview { get; init; }

    /// <summary>The screen as the text so far makes it, for what is looked for on it; null where a text does nothing before it is taken.</summary>
    public Func<IScreen, string, ScreenContext, IScreen>? Live { get; init; }

    /// <summary>Whether Enter goes on to the next field by itself.</summary>
    public bool GoesOn { get; init; }

    /// <summary>Whether the next line is asked for after each, so that several that are pasted are taken in turn.</summary>
    public bool LineByLine { get; init; }

    /// <summary>What was done just before, said until the text changes; null where there is nothing to say.</summary>
    public string? Note { get; init; }

    /// <summary>What speaks against going on, in sentences; null where nothing does.</summary>
    public string? Warning { get; init; }

    /// <summary>
    /// What may be a slip of the pen in a text that could be taken, in a sentence: Enter once more takes it all the same. Null where nothing is.
    /// </summary>
    public Func<string, ScreenContext, string?>? Doubt { get; init; }

    /// <summary>The field that it fills, as "item/field", for screens that show it in place.</summary>
    public string? InPlace { get; init; }
}
