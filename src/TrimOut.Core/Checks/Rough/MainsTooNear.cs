using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A low-voltage cable keeps 50 mm (2 in) from mains wiring, unless one of the two is sheathed or in conduit.</summary>
/// <remarks>
/// <para>Why: a nail or a bruise through both puts mains on the motors. A cable that touches it is another check's.</para>
/// <para>To clear: move the cable, or have the electrician say that the mains is sheathed or in conduit. The code in force governs.</para>
/// </remarks>
public sealed class MainsTooNear : RunCheck
{
    private static readonly Message Near = new("The cable comes within {0} of mains wiring that is not sheathed; {1} are asked for.");
    private static readonly Message MoveAway = new("Move the cable away, or ask the electrician for a sleeve. The code in force governs.");

    private static readonly Message AskWhetherItStays =
        new("The wall is closed: ask the electrician whether it may stay so, and write in the note what was said. The code in force governs.");

    /// <summary>The distance to keep.</summary>
    public static readonly Length Least = Length.FromMillimetres(50);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("mains-too-near", "Too near to mains wiring", Severity.Caution, Phase.RoughIn,
        new Source("NFPA 70-2017, 725.136(I); the code in force governs", "distance >= 50 mm (2 in), or sheathed, or in conduit"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.MainsDistance) is not { } distance)
            return NotChecked.Of(subject, RunFacts.MainsDistance);
        if (distance >= Least)
            return new Outcome.Fine();
        return subject.Item.Get(RunFacts.MainsSheathed) switch
        {
            null => NotChecked.Of(subject, RunFacts.MainsSheathed),
            YesNo.Yes => new Outcome.Fine(),
            _ when distance == Length.Zero => new Outcome.DoesNotApply(),
            _ => new Outcome.Found(Near.With(distance, Arg.Rule("2 in", "50 mm")), Moment.WallOpen(subject.Unit) ? MoveAway : AskWhetherItStays,
                FieldRef.To(subject.Item, RunFacts.MainsDistance)),
        };
    }
}
