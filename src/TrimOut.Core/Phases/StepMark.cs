namespace TrimOut.Core.Phases;

/// <summary>What was said of a step: done, or not needed and why.</summary>
/// <param name="NotNeededBecause">The reason; null when it was done.</param>
public sealed record StepMark(string? NotNeededBecause)
{
    /// <summary>The stored name of the fact that holds the marks.</summary>
    public const string FactName = "step";

    private const string NotNeeded = "not needed: ";

    /// <summary>Done.</summary>
    public static readonly StepMark Done = new((string?)null);

    /// <summary>Reads the stored form.</summary>
    public static Result<StepMark> Read(string text) =>
        text == "done" ? Done
        : text.StartsWith(NotNeeded, StringComparison.Ordinal) && text[NotNeeded.Length..].Trim() is { Length: > 0 } reason ? new StepMark(reason)
        : new Refusal("A step is done, or not needed: and then the reason.");

    /// <summary>The stored form.</summary>
    public override string ToString() => NotNeededBecause is null ? "done" : NotNeeded + NotNeededBecause;
}
