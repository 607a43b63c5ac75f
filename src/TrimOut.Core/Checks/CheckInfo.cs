using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>What a check is, the same for every house.</summary>
/// <param name="Id">Stable, kebab-case; names the fault, so that "waive ID" reads right. Never reused.</param>
/// <param name="Title">The fault in a few words.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="Phase">The phase in which it first matters.</param>
/// <param name="Source">Where its rule and figures come from.</param>
public sealed record CheckInfo(string Id, string Title, Severity Severity, Phase Phase, Source Source)
{
    /// <summary>The same check for each phase, for a rule that reports a fault in the phase of what it is about.</summary>
    internal IReadOnlyDictionary<Phase, CheckInfo> InEachPhase() => PhaseNames.All.ToDictionary(p => p, p => this with { Phase = p });
}

/// <summary>Where a rule or a figure comes from.</summary>
/// <param name="Title">A standard with its edition and section, or "common practice, no published source".</param>
/// <param name="Formula">The formula or the rule in short, as it is used here.</param>
public sealed record Source(string Title, string Formula)
{
    /// <summary>The title for a fact of the trade.</summary>
    public const string CommonPractice = "common practice, no published source";

    /// <summary>The title for what the kit says.</summary>
    public const string MakersSheet = "the maker's sheet, as kept in the kit";
}
