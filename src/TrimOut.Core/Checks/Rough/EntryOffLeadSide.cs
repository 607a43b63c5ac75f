using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable must leave the wall on the side where it reaches the unit.</summary>
/// <remarks>
/// <para>Why: from the other side it has to cross the window along the head, and the tail must be that much longer.</para>
/// <para>To clear: move the entry while the framing is open, or leave a tail that reaches.</para>
/// </remarks>
public sealed class EntryOffLeadSide : UnitCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-off-lead-side", "Entry is not on the lead side", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "entry side = lead side"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel)
            return new Outcome.DoesNotApply();
        if (subject.LeadSide is not { } lead)
            return Unknown.Of(subject, UnitFacts.LeadSide);
        if (subject.EntrySide is not { } entry)
            return Unknown.Of(subject, UnitFacts.EntrySide);
        if (entry == lead)
            return new Outcome.Fine();
        return new Outcome.Found(
            $"The cable leaves the wall on the {subject.Show(UnitFacts.EntrySide)} and reaches the unit on the {subject.Show(UnitFacts.LeadSide)}.{Reaching(subject)}",
            Moment.WallOpen(subject) ? $"Move the entry to the {subject.Show(UnitFacts.LeadSide)} now, while the wall is open."
                : "Lead the cable across behind the head cover, and see that the tail reaches.",
            FieldRef.To(subject.Item, UnitFacts.EntrySide));
    }

    private static string Reaching(Unit unit) =>
        unit is { PartWidth: { } width, EntryFromJamb: { } jamb, EntryBelowHead: { } below } && unit.Kind?[CoveringKindFacts.LeadBehind] is { } behind
            ? $" A tail of {TailPath.ToMotor(width, jamb, below, atMotorEnd: false, behind).In(unit)} reaches across."
            : "";
}
