using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The tail in the mechanical room is at least half of what the house plans there.</summary>
/// <remarks>
/// <para>Why: a cable that reaches one corner of the panel only needs a joint outside it for every output that moves.</para>
/// <para>To clear: pull slack back to the panel while the wall is open, or hang the panel where the cables reach.</para>
/// </remarks>
public sealed class PanelTailShort : RunCheck
{
    private static readonly Message Short = new("The tail at the panel is {0}; {1} is planned.");
    private static readonly Message PullMore = new("Pull {0} more to the mechanical room now, while the wall is open.");
    private static readonly Message HangNearer =
        new("Hang the panel where it reaches its output, or join it in a box that stays within reach, where the code allows one.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("panel-tail-short", "Tail at the panel is short", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "tail at panel >= half of the tail that is planned there"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.BranchesOff is not null)
            return new Outcome.DoesNotApply();
        if (subject.TailAtPanel is not { } tail)
            return NotChecked.Of(subject, RunFacts.TailAtPanel);
        if (subject.House.Job.Get(HouseFacts.PanelTail) is not { } planned)
            return NotChecked.Of(new JobItself(subject.House), HouseFacts.PanelTail);
        var working = Working.Of(Info.Source.Formula, () => [("tail at panel", tail.In(subject)), ("planned", planned.In(subject))]);
        return tail >= planned / 2
            ? new Outcome.Fine(working)
            : new Outcome.Found(Short.With(tail, planned), Moment.WallOpen(subject.Unit) ? PullMore.With(planned - tail) : HangNearer,
                FieldRef.To(subject.Item, RunFacts.TailAtPanel), working);
    }
}
