using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The head cover is inside the opening at the setback of the sheet.</summary>
/// <remarks>
/// <para>Why: brackets fixed at the usual setback would leave no room behind; a smaller one makes it flush.</para>
/// <para>To clear: fix the brackets nearer to the room face, if the sheet allows it.</para>
/// </remarks>
public sealed class SetbackTooDeep : UnitCheck
{
    private static readonly Message TooDeep = new("Set back {0}, a head cover {1} deep does not fit a depth of {2}.");
    private static readonly Message SetBackLess = new("Set the brackets back {0} or less, if the sheet allows it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("setback-too-deep", "Flush only with less setback", Severity.Note, Phase.Measure,
        new Source(Source.MakersSheet, "setback + head cover <= depth"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var (figures, unknown) = Cover.Of(subject);
        if (figures is not { } cover)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        return cover.Fit switch
        {
            RevealFit.Flush => new Outcome.Fine(cover.Working(subject, Info.Source.Formula)),
            RevealFit.FlushWithLessSetback => new Outcome.Found(
                TooDeep.With(cover.Setback, cover.Reach, cover.Depth), SetBackLess.With(cover.Depth - cover.Reach),
                FieldRef.To(subject.Item, UnitFacts.Setback),
                cover.Working(subject, Info.Source.Formula)),
            _ => new Outcome.DoesNotApply(),
        };
    }
}
