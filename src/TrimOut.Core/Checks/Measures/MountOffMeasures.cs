using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>A window that is mounted inside has no measures that only an outside mount has.</summary>
/// <remarks>
/// <para>Why: one of the two is a slip, and by an inside mount the unit is ordered narrower by both overlaps: it hangs in nothing.</para>
/// <para>To clear: put the mount right before it is ordered, or take the measure away that is left from another plan.</para>
/// </remarks>
public sealed class MountOffMeasures : WindowCheck
{
    private static readonly Message OutsideMeasure = new("It is mounted inside, and its {0} is {1}: only an outside mount has that.");
    private static readonly Message PutRight = new("Put the mount right before it is ordered; if it hangs inside, take that measure away.");

    private static readonly Message AsItHangs = new("Put the mount as it hangs; if it hangs inside, take that measure away.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("mount-off-measures", "Mounted inside, measured for outside", Severity.Caution, Phase.Measure,
        new Source(Source.CommonPractice, "inside: no overlap and no head above the opening"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Mount is not { } mount)
            return NotChecked.Of(subject, WindowFacts.Mount);
        if (mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        return Outcome.All(((Fact<Length>[])[WindowFacts.OverlapEachSide, WindowFacts.HeadAbove]).Select(fact =>
            subject.Item.Get(fact) is { } length && length > Length.Zero
                ? new Outcome.Found(OutsideMeasure.With(Arg.Label(fact), length), subject.Units.Any(Moment.Hangs) ? AsItHangs : PutRight,
                    FieldRef.To(subject.Item, WindowFacts.Mount))
                : null)) ?? (Outcome)new Outcome.Fine();
    }
}
