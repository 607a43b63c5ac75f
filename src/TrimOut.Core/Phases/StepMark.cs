namespace TrimOut.Core.Phases;

/// <summary>What was said of a step: done, done although something spoke against it, or not needed and why.</summary>
/// <param name="NotNeededBecause">The reason; null when it was done.</param>
/// <param name="Although">Why it was done out of its order or over an open stop; null where nothing spoke against it.</param>
public sealed record StepMark(string? NotNeededBecause, string? Although = null)
{
    /// <summary>The stored name of the fact that holds the marks.</summary>
    public const string FactName = "step";

    private const string NotNeeded = "not needed: ";
    private const string DoneAlthough = "done although: ";

    /// <summary>Done.</summary>
    public static readonly StepMark Done = new((string?)null);

    /// <summary>Reads the stored form.</summary>
    public static Result<StepMark> Read(string text) =>
        text == "done" ? Done
        : After(NotNeeded, text) is { } reason ? new StepMark(reason)
        : After(DoneAlthough, text) is { } although ? new StepMark(null, although)
        : new Refusal("A step is done, done although: and then why, or not needed: and then why.");

    /// <summary>The stored form.</summary>
    public override string ToString() => NotNeededBecause is not null ? NotNeeded + NotNeededBecause : Although is not null ? DoneAlthough + Although : "done";

    private static string? After(string begin, string text) =>
        text.StartsWith(begin, StringComparison.Ordinal) && text[begin.Length..].Trim() is { Length: > 0 } rest ? rest : null;
}
