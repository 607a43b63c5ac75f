using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Measures;

/// <summary>An inside mount does not stand out into the room.</summary>
/// <remarks>
/// <para>Why: the owner expects it flush with the wall and sees the side of the cover instead.</para>
/// <para>To clear: a smaller head cover, an outside mount, or the owner's word that it may stand out.</para>
/// </remarks>
public sealed class StandsOutOfReveal : UnitCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("stands-out-of-reveal", "Stands out of the reveal", Severity.Caution, Phase.Measure,
        new Source(Source.MakersSheet, "head cover, or depth for flush without one, <= depth"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var (figures, unknown) = Cover.Of(subject);
        if (figures is not { } cover)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        return cover.Fit switch
        {
            RevealFit.StandsOut => new Outcome.Found(
                $"It needs {cover.Reach.In(subject)} to be flush and the reveal is {cover.Depth.In(subject)} deep: {(cover.Reach - cover.Depth).In(subject)} stand out.",
                "Choose a smaller head cover, mount it outside, or have the owner agree that it stands out.", FieldRef.To(subject.Item, UnitFacts.HeadCover),
                cover.Working(subject, Info.Source.Formula)),
            RevealFit.DoesNotFit => new Outcome.DoesNotApply(),
            _ => new Outcome.Fine(cover.Working(subject, Info.Source.Formula)),
        };
    }
}
