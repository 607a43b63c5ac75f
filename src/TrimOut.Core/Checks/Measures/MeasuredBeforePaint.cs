using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>A window is measured when its opening is painted, not before.</summary>
/// <remarks>
/// <para>Why: plaster, trim and paint make an opening smaller, and a unit that was measured before them jams.</para>
/// <para>To clear: measure again after the paint, or put the day right on which the painter is done. The day of a measure is the day on which it was
/// written.</para>
/// </remarks>
public sealed class MeasuredBeforePaint : WindowCheck
{
    private static readonly Message TooEarly = new("It was measured on {0}; the painter is done on {1}.");
    private static readonly Message MeasureAfter = new("Measure it again after the paint, or put that day right.");

    private static readonly ImmutableArray<Fact> Measures =
    [
        WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight,
    ];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("measured-before-paint", "Measured before it was painted", Severity.Caution, Phase.Measure,
        new Source(Source.CommonPractice, "day of the first measure >= day painted"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        var heads = Measures.Select(f => (Fact: f, Head: subject.Item.Latest(f))).Where(m => m.Head is { Stored: not null }).ToList();
        if (heads.Count == 0)
            return NotChecked.Of(subject, WindowFacts.WidthTop);
        var job = new JobItself(subject.House);
        if (job.Item.Get(HouseFacts.PaintedOn) is not { } painted)
            return NotChecked.Of(job, HouseFacts.PaintedOn);
        var (first, head) = heads.MinBy(m => m.Head!.At);
        var measured = DateOnly.FromDateTime(head!.At.DateTime);
        return measured >= painted
            ? new Outcome.Fine()
            : new Outcome.Found(TooEarly.With(Arg.Value(HouseFacts.PaintedOn, measured), Arg.Value(HouseFacts.PaintedOn, painted)), MeasureAfter,
                FieldRef.To(subject.Item, first));
    }
}
