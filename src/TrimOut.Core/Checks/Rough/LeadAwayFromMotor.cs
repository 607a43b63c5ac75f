using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable must reach a unit at the end its motor is at.</summary>
/// <remarks>
/// <para>Why: a lead on the far side has to cross the whole window, in sight or behind the head cover.</para>
/// <para>To clear: another lead side, or a unit with its motor at the other end.</para>
/// </remarks>
public sealed class LeadAwayFromMotor : UnitCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("lead-away-from-motor", "Lead side is not the motor end", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet, "lead side = motor end of the kind"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Kind is not { MotorEnd: { } end } kind)
            return Unknown.Of(subject.Kind, CoveringKindFacts.MotorEnd, subject, UnitFacts.Kind);
        if (subject.LeadSide is not { } lead)
            return Unknown.Of(subject, UnitFacts.LeadSide);
        if (end == MotorEnd.Either || (end == MotorEnd.Left) == (lead == Side.Left))
            return new Outcome.Fine();
        var (lies, has) = (subject.Show(UnitFacts.LeadSide), kind.Show(CoveringKindFacts.MotorEnd));
        return new Outcome.Found(
            $"The lead is on the {lies}; {kind.Name} has its motor on the {has}.",
            Moment.WallOpen(subject) ? $"Bring the cable to the {has} side now, while the wall is open."
                : Moment.NotOrdered(subject) ? $"Order it with the motor on the {lies}, if the maker offers that."
                : "Ask the maker for the motor at the other end, or lead the cable across behind the head cover.",
            FieldRef.To(subject.Item, UnitFacts.LeadSide));
    }
}
