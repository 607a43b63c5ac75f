using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A hole nearer than 1 1/4 in to the edge of a stud gets a nail plate.</summary>
/// <remarks>
/// <para>Why: drywall screws find cables that run near the face.</para>
/// <para>To clear: a steel plate over the edge, or another hole. A distance to the middle of the hole counts less half of the
/// drill. For low-voltage cable this is good practice in some editions and a rule in others.</para>
/// </remarks>
public sealed class HoleNearEdge : RunCheck
{
    private static readonly Message NoPlate =
        new("A hole comes within {0} of the edge and has no nail plate; {1} is good practice, and the rule in some editions.");
    private static readonly Message NailPlate = new("Nail a steel plate over it before the drywall comes.");

    private static readonly Message MarkIt =
        new("The wall is closed: read the cable again with its far end open, and note where that hole is, so that nobody drives a screw there.");

    /// <summary>The distance from which on no plate is asked for.</summary>
    public static readonly Length Least = Length.FromInches(1, 1, 4);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hole-near-edge", "Hole near the edge without a nail plate", Severity.Caution, Phase.RoughIn,
        new Source("NFPA 70-2017, 300.4(A); whether it binds low-voltage cable depends on the edition, good practice everywhere",
            "from the side of the hole to the edge >= 1 1/4 in (32 mm), or a plate; side = middle - drill / 2"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.HoleEdge) is not { } edge)
            return NotChecked.Of(subject, RunFacts.HoleEdge);
        var to = subject.Item.Get(RunFacts.HoleTo);
        if (to == HoleTo.Middle)
        {
            if (subject.Item.Get(RunFacts.HoleDrill) is not { } drill)
                return NotChecked.Of(subject, RunFacts.HoleDrill);
            edge = Length.Max(Length.Zero, edge - drill / 2);
        }
        if (edge >= Least)
            return to is null && NotChecked.WhereAsked(subject.Unit, "holes-guarded", subject, RunFacts.HoleTo) is Outcome.NotChecked asked
                ? asked
                : new Outcome.Fine();
        return subject.Item.Get(RunFacts.NailPlates) switch
        {
            null => NotChecked.Of(subject, RunFacts.NailPlates),
            YesNo.Yes => new Outcome.Fine(),
            _ => new Outcome.Found(NoPlate.With(edge, Least), Moment.WallOpen(subject.Unit) ? NailPlate : MarkIt,
                FieldRef.To(subject.Item, RunFacts.NailPlates)),
        };
    }
}
