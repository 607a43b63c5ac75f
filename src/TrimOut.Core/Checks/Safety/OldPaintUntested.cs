using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Safety;

/// <summary>Paint that may hold lead is tested before anybody drills or sands it.</summary>
/// <remarks>
/// <para>Why: its dust poisons whoever lives there, children first.</para>
/// <para>To clear: have it tested and write by whom; or write who treats it as lead paint, and how.</para>
/// </remarks>
public sealed class OldPaintUntested() : Check<JobItself>(Subjects.House)
{
    private static readonly Message MayHoldLead = new("The oldest paint is of {0} and may hold lead; no test of it is written.");
    private static readonly Message TestFirst =
        new("Before anybody drills: have it tested, or have it treated as lead paint by whoever the local rules let do it, and write which.");

    /// <summary>The first year whose paint is taken as free of lead.</summary>
    public const int FreeFrom = 1978;

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("old-paint-untested", "Old paint is drilled without a test for lead", Severity.Caution, Phase.WalkThrough,
        new Source("US 40 CFR 745, subpart E: housing built before 1978 (from memory); other countries have other years, local rules govern",
            "paint before 1978 = tested"));

    /// <inheritdoc/>
    public override Outcome Judge(JobItself subject)
    {
        if (subject.Item.Get(HouseFacts.OldestPaint) is not { } year)
            return NotChecked.Of(subject, HouseFacts.OldestPaint);
        return year >= FreeFrom || subject.Item.Get(HouseFacts.PaintTested) is not null
            ? new Outcome.Fine()
            : new Outcome.Found(MayHoldLead.With(year), TestFirst, FieldRef.To(subject.Item, HouseFacts.PaintTested));
    }
}
