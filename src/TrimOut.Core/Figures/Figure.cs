using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;

namespace TrimOut.Core.Figures;

/// <summary>A figure that was worked out, with all that somebody may ask about it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Its value as shown; what is missing where it can't be worked out yet.</param>
/// <param name="Working">Formula and inputs.</param>
/// <param name="Source">Where formula and constants come from.</param>
/// <param name="About">Facts that it is shown beside, or that go into it.</param>
public sealed record Figure(string Name, string Value, Working Working, Source Source, ImmutableArray<Fact> About)
{
    /// <summary>The values of makers' sheets that it was worked out with and that nobody checked against their sheets.</summary>
    public ImmutableArray<Fact> Unchecked { get; init; } = [];

    /// <summary>Which these are, in words; null where there is none.</summary>
    public string? ByUnchecked => Unchecked.IsEmpty ? null : $"by values that nobody checked: {string.Join(", ", Unchecked.Select(f => f.Label))}";

    /// <summary>Whether it is shown beside a fact, or a fact goes into it.</summary>
    public bool IsAbout(Fact fact) => About.Contains(fact);
}
