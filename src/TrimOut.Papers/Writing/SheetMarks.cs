using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;

namespace TrimOut.Papers.Writing;

/// <summary>
/// What comes from a maker's sheet, on paper: each figure that was worked out with a value that nobody checked against its sheet has the mark that the
/// screens give it.
/// </summary>
internal static class SheetMarks
{
    /// <summary>A value of a part, marked where nobody checked it; a dash where there is no part, or its sheet was not read for it.</summary>
    public static Inline EntryOfSheet(this KitSheet? part, Fact fact) => part?.Entry(fact) ?? Inline.Dash;

    /// <summary>What is said of a unit, marked where it was worked out with a value that nobody checked.</summary>
    public static Inline BySheet(this Unit unit, Func<Unit, Inline> figure)
    {
        var (entry, by) = UncheckedValues.ReadFields(unit, figure);
        return entry.Marked(by, unit);
    }

    /// <summary>A figure of a unit, marked where it was worked out with values of its parts that nobody checked.</summary>
    public static Inline MarkedBy(this Inline figure, IReadOnlyList<Fact> values, Unit unit) => figure.Marked(
        [.. unit.Parts.SelectMany(p => values.Where(v => v.Subject == p.Kind && !SheetMark.Holds(p, v)), (p, v) => FieldRef.To(p, v))], unit);

    /// <summary>A figure, marked where it rests on values that nobody checked: the head of its paper names them.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="by">The values, as fields of their parts.</param>
    /// <param name="of">The unit whose figure it is; null for one of a part itself.</param>
    public static Inline Marked(this Inline figure, IReadOnlyList<FieldRef> by, Unit? of)
    {
        var marked = figure.Marked(by.Count > 0);
        if (marked != figure)
            PrintedMarks.Note(by, of);
        return marked;
    }

    /// <summary>What is said of a run, marked likewise.</summary>
    public static Inline BySheet(this HomeRun run, Func<HomeRun, Inline> figure) => run.Unit.BySheet(u => figure(u.Run!));

    /// <summary>What a finding says, marked where it was judged by a value that nobody checked.</summary>
    public static Inline Said(PaperData data, Finding finding) =>
        Inline.Said(finding.Found.Message, data.House).Marked(data.Report.UncheckedBehind(finding).Count > 0);

    /// <summary>A figure, marked where it was worked out with a value that nobody checked; not where there is none.</summary>
    public static Inline Marked(this Inline figure, bool byUnchecked) =>
        byUnchecked && figure != Inline.Dash && figure != Inline.Blank && figure != Inline.NotYet ? Inline.WithBehind(figure, UncheckedValues.Mark) : figure;

    /// <summary>How many checks pass only by values that nobody checked; null where none does. None of them is a pass yet.</summary>
    public static Inline? Passing(PaperData data) => data.Report.Unread.Length is > 0 and var passing
        ? Inline.Ours($"Checks that pass only by values that nobody checked against a maker's sheet: {passing}. They are no pass yet.") : null;

    /// <summary>Whether a mark stands in a paper.</summary>
    public static bool AreIn(string markdown) => markdown.Contains(UncheckedValues.Mark, StringComparison.Ordinal);

    /// <summary>What the mark means, for the foot of a sheet.</summary>
    public const string AtFoot = "? rests on a maker's sheet and was not checked against it";

    /// <summary>Says what the mark means.</summary>
    public static void Explain(MarkdownWriter to) =>
        to.Say("A ? behind a figure or a sentence: it rests on a maker's sheet, and nobody checked it against that sheet yet.");
}
