using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A hole nearer than 1 1/4 in to the edge of a stud gets a nail plate.</summary>
/// <remarks>
/// <para>Why: drywall screws find cables that run near the face.</para>
/// <para>To clear: a steel plate over the edge, or another hole. For low-voltage cable this is good practice in some editions and a rule in others.</para>
/// </remarks>
public sealed class HoleNearEdge : RunCheck
{
    /// <summary>The distance from which on no plate is asked for.</summary>
    public static readonly Length Least = Length.FromInches(1, 1, 4);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hole-near-edge", "Hole near the edge without a nail plate", Severity.Caution, Phase.RoughIn,
        new Source("NFPA 70-2017, 300.4(A); whether it binds low-voltage cable depends on the edition, good practice everywhere", "edge >= 1 1/4 in (32 mm), or a plate"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.HoleEdge) is not { } edge)
            return Unknown.Of(subject, RunFacts.HoleEdge);
        if (edge >= Least)
            return new Outcome.Fine();
        return subject.Item.Get(RunFacts.NailPlates) switch
        {
            null => Unknown.Of(subject, RunFacts.NailPlates),
            YesNo.Yes => new Outcome.Fine(),
            _ => new Outcome.Found($"A hole comes within {edge.In(subject)} of the edge and has no nail plate; {Least.In(subject)} is good practice, and the rule in some editions.",
                "Nail a steel plate over it before the drywall comes.", FieldRef.To(subject.Item, RunFacts.NailPlates)),
        };
    }
}
