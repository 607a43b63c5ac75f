using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>Every opening that was counted is recorded as a window.</summary>
/// <remarks>
/// <para>Why: a window that nobody walked past gets no cable, and is missed when the wall is closed.</para>
/// <para>To clear: record the window that is missing, with a covering or left out; take out one that stands there twice; or count again. It is judged
/// once the openings are marked counted, so that it does not speak in the middle of the walk.</para>
/// </remarks>
public sealed class OpeningsOffCount() : Check<JobItself>(Subjects.House)
{
    private static readonly Message Missing = new("{0} openings were counted, and {1} are recorded.", "missing");
    private static readonly Message TooMany = new("{0} openings were counted, and {1} are recorded.", "too-many");
    private static readonly Message FindIt =
        new("Go round once more with the schedule, and record the window that is missing before the wall closes, with a covering or left out.");
    private static readonly Message FindItBehindTheWall =
        new("Go round once more with the schedule and record the window that is missing: left out, or with a covering on a battery or a plug.");
    private static readonly Message CountAgain = new("Count again; take out a window that is recorded twice.");
    private static readonly Message MarkedCounted = new("openings marked counted");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("openings-off-count", "Openings counted and windows recorded differ", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice, "openings counted = windows recorded, left out or not"));

    /// <inheritdoc/>
    public override Outcome Judge(JobItself subject)
    {
        if (subject.Item.Get(HouseFacts.Openings) is not { } counted)
            return NotChecked.WhereAsked(subject, Counted, subject, HouseFacts.Openings);
        var recorded = subject.House.Windows.Length;
        return recorded == counted ? new Outcome.Fine()
            : subject.MarkOf(StepList.Find(Counted)!) is null ? new Outcome.NotChecked(MarkedCounted)
            : recorded < counted ? Found(subject, Missing.With(counted, recorded), Moment.WallsOpen(subject.House) ? FindIt : FindItBehindTheWall)
            : Found(subject, TooMany.With(counted, recorded), CountAgain);
    }

    private const string Counted = "openings-counted";

    private static Outcome.Found Found(JobItself job, Sentence message, Message mend) => new(message, mend, FieldRef.To(job.Item, HouseFacts.Openings));
}
