using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Writing;

/// <summary>Values of makers' sheets as they stand on paper: each that nobody checked against its sheet has the mark that the screens give it.</summary>
internal static class SheetMarks
{
    private const string Mark = "?";

    /// <summary>A value of a part, marked where nobody checked it; a dash where there is no part, or its sheet was not read for it.</summary>
    public static Inline EntryOfSheet(this KitSheet? part, Fact fact) => part?.Shown(fact) is { } shown ? shown.Marked(!part.IsChecked(fact)) : Inline.Dash;

    /// <summary>A figure, marked where it was worked out with a value that nobody checked.</summary>
    public static Inline Marked(this Inline figure, bool byUnchecked) => byUnchecked ? Inline.Join(" ", [figure, Mark]) : figure;

    /// <summary>Says what the mark means, where one of these parts has one of these values and nobody checked it.</summary>
    public static void Explain(MarkdownWriter to, IEnumerable<KitSheet?> parts, params Fact[] values)
    {
        if (parts.OfType<KitSheet>().Any(p => values.Any(v => p.Shown(v) is not null && !p.IsChecked(v))))
            to.Say("A ? behind a figure: it comes from a maker's sheet, and nobody checked it against that sheet yet.");
    }
}
