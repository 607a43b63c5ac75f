namespace TrimOut.Core.Decisions;

/// <summary>A line that says two unlike things of one detail: nobody can know which is meant, and the last word does not win.</summary>
internal static class SaidTwice
{
    /// <summary>The refusal, which names both.</summary>
    /// <param name="label">What both stand for, as the screens call it.</param>
    /// <param name="one">What was typed first.</param>
    /// <param name="other">What was typed after it.</param>
    public static Refusal Refuse(string label, string one, string other) => new($"{one} and {other} both stand for \"{label}\": type one of them.");
}
