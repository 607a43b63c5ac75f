using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A hole nearer than 1 1/4 in to the edge of a stud gets a nail plate.</summary>
/// <remarks>
/// <para>Why: drywall screws find cables that run near the face.</para>
/// <para>To clear: a steel plate over the edge, or another hole. For low-voltage cable this is good practice in some editions and a rule in others.</para>
/// </remarks>
public sealed class HoleNearEdge : RunCheck
{
    private static readonly Message NoPlate =
        new("A hole comes within {0} of the edge and has no nail plate; {1} is good practice, and the rule in some editions.");
    private static readonly Message NailPlate = new("Nail a steel plate over it before the drywall comes.");

    /// <summary>The distance from which on no plate is asked for.</summary>
    public static readonly Length Least = Length.FromInches(1, 1, 4);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hole-near-edge", "Hole near the edge without a nail plate", Severity.Caution, Phase.RoughIn,
        new Source("NFPA 70-2017, 300.4(A); whether it binds low-voltage cable depends on the edition, good practice everywhere",
            "edge >= 1 1/4 in (32 mm), or a plate"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.HoleEdge) is not { } edge)
            return NotChecked.Of(subject, RunFacts.HoleEdge);
        if (edge >= Least)
            return new Outcome.Fine();
        return subject.Item.Get(RunFacts.NailPlates) switch
        {
            null => NotChecked.Of(subject, RunFacts.NailPlates),
            YesNo.Yes => new Outcome.Fine(),
            _ => new Outcome.Found(NoPlate.With(edge, Least), NailPlate, FieldRef.To(subject.Item, RunFacts.NailPlates)),
        };
    }
}
