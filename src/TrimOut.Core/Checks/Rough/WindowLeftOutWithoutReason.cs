using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A window that gets no covering says why.</summary>
/// <remarks>
/// <para>Why: a window left out on purpose and one that was forgotten look the same until the wall is closed.</para>
/// <para>To clear: write the reason, or give it a covering.</para>
/// </remarks>
public sealed class WindowLeftOutWithoutReason() : Check<Window>(Subjects.Windows)
{
    private static readonly Message NobodySaidWhy = new("{0} gets no covering and nobody said why.");
    private static readonly Message WriteReason = new("Write the reason, or give it a covering while the wall is open.");

    private static readonly Message ReasonOrBattery = new("Write the reason, or give it a covering on a battery or a plug: the walls are closed.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("window-left-out-without-reason", "Window left out without a reason", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "left out on purpose = with a reason"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject) =>
        !subject.LeftOut ? new Outcome.DoesNotApply()
        : subject.Item.Evidence(WindowFacts.NotCoveredBecause) is not null ? new Outcome.Fine()
        : new Outcome.Found(NobodySaidWhy.With(Arg.Name(subject)), Moment.WallsOpen(subject.House) ? WriteReason : ReasonOrBattery,
            FieldRef.To(subject.Item, WindowFacts.NotCoveredBecause));
}
