using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Writing;

/// <summary>A value that two laptops put differently, on paper: the last one is printed, and a mark says that it may be the wrong one.</summary>
internal static class DisputeMarks
{
    private const string Mark = "\u00A0\u2260";

    /// <summary>Whether two laptops have different values for a fact.</summary>
    public static bool IsOn(Subject subject, Fact fact) => Disagreement.IsAbout(subject.Item, fact);

    /// <summary>A value as it is printed, marked where two laptops have different ones.</summary>
    public static Inline InDispute(this Inline entry, Subject subject, Fact fact) => IsOn(subject, fact) ? Inline.WithBehind(entry, Mark) : entry;

    /// <summary>Whether a mark stands in a paper.</summary>
    public static bool AreIn(string markdown) => markdown.Contains(Mark, StringComparison.Ordinal);

    /// <summary>Says what the mark means.</summary>
    public static void Explain(MarkdownWriter to) =>
        to.Say("A \u2260 behind a value: two laptops have different ones, and the last is shown. Find out which is right before you work by it.");
}
