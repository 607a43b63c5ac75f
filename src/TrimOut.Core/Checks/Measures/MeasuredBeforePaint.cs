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
    private static readonly Message TooEarly = new("Its width was written down on {0}; the painter is done on {1}.");
    private static readonly Message MeasureAfter = new("Measure it again after the paint, or put that day right.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("measured-before-paint", "Measured before it was painted", Severity.Caution, Phase.Measure,
        new Source(Source.CommonPractice, "day of the width >= day painted"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Item.Latest(WindowFacts.WidthTop) is not { Stored: not null } width)
            return NotChecked.Of(subject, WindowFacts.WidthTop);
        var job = new JobItself(subject.House);
        if (job.Item.Get(HouseFacts.PaintedOn) is not { } painted)
            return NotChecked.Of(job, HouseFacts.PaintedOn);
        var measured = DateOnly.FromDateTime(width.At.DateTime);
        return measured >= painted
            ? new Outcome.Fine()
            : new Outcome.Found(TooEarly.With(Arg.Value(HouseFacts.PaintedOn, measured), Arg.Value(HouseFacts.PaintedOn, painted)), MeasureAfter,
                FieldRef.To(subject.Item, WindowFacts.WidthTop));
    }
}
