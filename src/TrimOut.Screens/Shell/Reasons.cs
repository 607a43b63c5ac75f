using TrimOut.Core;

namespace TrimOut.Screens.Shell;

/// <summary>What is typed as a reason: an answer that was meant for another question is none.</summary>
internal static class Reasons
{
    private const int LeastLetters = 3;

    private static readonly string[] Answers = ["yes", "nope", "nein", "non", "okay", "none"];

    /// <summary>What comes of a reason, or why it is asked for again.</summary>
    public static Result<Transition> Take(string typed, Func<string, Result<Transition>> then) =>
        Against(typed) is { } why ? new Refusal($"{why} Type it in a few words, or leave with Esc.") : then(typed.Trim());

    /// <summary>What speaks against a reason; null where nothing does. An empty one has its own words where it is asked for.</summary>
    public static string? Against(string typed) => IsNone(typed.Trim()) ? $"\"{typed.Trim()}\" is no reason." : null;

    // In other signs than plain letters two may be two words.
    private static bool IsNone(string reason) => reason.Length > 0 && reason.All(char.IsAscii)
        && (reason.Count(char.IsAsciiLetter) < LeastLetters || Answers.Contains(reason.TrimEnd('.', '!'), StringComparer.OrdinalIgnoreCase));
}
