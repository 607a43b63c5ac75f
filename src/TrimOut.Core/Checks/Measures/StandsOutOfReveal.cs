using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>An inside mount does not stand out into the room.</summary>
/// <remarks>
/// <para>Why: the owner expects it flush with the wall and sees the side of the cover instead.</para>
/// <para>To clear: a smaller head cover, an outside mount, or the owner's word that it may stand out.</para>
/// </remarks>
public sealed class StandsOutOfReveal : UnitCheck
{
    private static readonly Message StandsOut = new("It needs {0} to be flush and the opening is {1} deep: {2} stand out.");
    private static readonly Message ChooseSmaller = new("Choose a smaller head cover, mount it outside, or have the owner agree that it stands out.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("stands-out-of-reveal", "Sticks out of the opening", Severity.Caution, Phase.Measure,
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
                StandsOut.With(cover.Reach, cover.Depth, cover.Reach - cover.Depth), ChooseSmaller, FieldRef.To(subject.Item, UnitFacts.HeadCover),
                cover.Working(subject, Info.Source.Formula)),
            RevealFit.DoesNotFit => new Outcome.DoesNotApply(),
            _ => new Outcome.Fine(cover.Working(subject, Info.Source.Formula)),
        };
    }
}
