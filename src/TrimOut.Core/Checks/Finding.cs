using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>A broken rule, with what was said about it.</summary>
/// <param name="Check">The check.</param>
/// <param name="Subject">The item it is about.</param>
/// <param name="Found">What is wrong and what mends it.</param>
/// <param name="Waiver">The waiver that holds for exactly these figures; null when it is open.</param>
public sealed record Finding(CheckInfo Check, Item Subject, Outcome.Found Found, Waiver? Waiver)
{
    /// <summary>Whether it is still to be mended or waived.</summary>
    public bool Open => Waiver is null;
}

/// <summary>Something that could not be checked yet.</summary>
/// <param name="Check">The check.</param>
/// <param name="Subject">The item it is about.</param>
/// <param name="NotChecked">What is missing.</param>
public sealed record NotCheckedYet(CheckInfo Check, Item Subject, Outcome.NotChecked NotChecked);
