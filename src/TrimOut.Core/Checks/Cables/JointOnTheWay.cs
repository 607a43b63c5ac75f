using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A home run is one piece from its box.</summary>
/// <remarks>
/// <para>Why: a joint that nobody can reach fails behind plaster, and a good one shows in no reading.</para>
/// <para>To clear: pull one piece; or bring the joint into a box with a cover that stays in reach, where code and sheet allow it, and waive this with
/// its place.</para>
/// </remarks>
public sealed class JointOnTheWay : RunCheck
{
    private static readonly Message HasJoint = new("The cable is not one piece from its box: there is a joint on its way.");
    private static readonly Message WhileOpen = new("Pull one piece now, while the wall is open.");
    private static readonly Message WallClosed =
        new("Find the joint and bring it into a box with a cover that stays in reach, as far as the code in force and the sheet allow it; " +
            "else pull a new cable.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("joint-on-the-way", "Cable has a joint on its way", Severity.Stop, Phase.RoughIn,
        new Source("NFPA 70-2017, 300.15 (from memory); whether it binds low-voltage cable depends on the edition, good practice everywhere",
            "one piece from box to both ends"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject) => subject.Item.Get(RunFacts.OnePiece) switch
    {
        null => NotChecked.WhereAsked(subject.Unit, "cable-pulled", subject, RunFacts.OnePiece),
        YesNo.Yes => new Outcome.Fine(),
        _ => new Outcome.Found(HasJoint, Moment.WallOpen(subject.Unit) ? WhileOpen : WallClosed, FieldRef.To(subject.Item, RunFacts.OnePiece)),
    };
}
