using System.Collections.Immutable;
using TrimOut.Core.Plans.Firm;

namespace TrimOut.Screens.Firm;

/// <summary>A house among many.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Summary">What was last known of it; null where nothing is known.</param>
/// <param name="Why">Why it can't be opened; null where it can, or nobody tried yet.</param>
/// <param name="Stale">Whether it changed since that was known, or nothing was kept: it is made anew.</param>
public sealed record FirmRow(string Path, HouseSummary? Summary, string? Why, bool Stale)
{
    /// <summary>What was to be said about how it was found: damage, saves that are missing.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>Files of other copies of this house, which count no second time.</summary>
    public ImmutableArray<string> Copies { get; init; } = [];

    /// <summary>Whether saves of it are in doubt.</summary>
    public bool InDoubt { get; init; }

    /// <summary>Exactly the changes that it has, in the form in which that is kept of it.</summary>
    public string Held { get; init; } = "";

    /// <summary>How many of its changes are not at the office, and how many came from there and were put off; null where this laptop knows no office.</summary>
    public (int NotThere, int PutOff)? AtOffice { get; init; }

    /// <summary>What it is called: by its own name, or by its file as long as that is not known.</summary>
    public string Name => Summary?.Name is { Length: > 0 } name ? name : System.IO.Path.GetFileNameWithoutExtension(Path);
}
