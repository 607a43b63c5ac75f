using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable must leave the wall on the side where it reaches the unit.</summary>
/// <remarks>
/// <para>Why: from the other side it has to cross the window along the head, and the tail must be that much longer.</para>
/// <para>To clear: move the entry while the framing is open, or leave a tail that reaches.</para>
/// </remarks>
public sealed class EntryOffLeadSide : UnitCheck
{
    private static readonly Message OtherSide = new("The cable leaves the wall on the {0} and reaches the unit on the {1}.");
    private static readonly Message OtherSideReached =
        new("The cable leaves the wall on the {0} and reaches the unit on the {1}. A tail of {2} reaches across.");
    private static readonly Message MoveEntry = new("Move the entry to the {0} now, while the wall is open.");
    private static readonly Message MoveOrPutBack =
        new("Move the entry to the {0} now, while the wall is open; or put the lead side to {1} if that was mistyped.");
    private static readonly Message PutBack =
        new("The motor is on the {0} too: put the lead side back to {0} if it was mistyped, and leave the cable where it is.");
    private static readonly Message LeadAcross = new("Lead the cable across behind the head cover, and see that the tail reaches.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-off-lead-side", "Entry is not on the lead side", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "entry side = lead side, or the motor end of the kind while no lead side is said"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel)
            return new Outcome.DoesNotApply();
        // Until a lead side is said, the motor of the kind says where the cable has to reach it; a match is then no pass.
        if ((subject.LeadSide ?? subject.MotorSide) is not { } lead || (subject.LeadSide is null && subject.EntrySide == lead))
            return NotChecked.Of(subject, UnitFacts.LeadSide);
        if (subject.EntrySide is not { } entry)
            return NotChecked.Of(subject, UnitFacts.EntrySide);
        if (entry == lead)
            return new Outcome.Fine();
        // Two against one: the kind has its motor where the cable comes out.
        var known = subject.Kind?.MotorEnd is MotorEnd.Left or MotorEnd.Right;
        var mistyped = known && subject.MotorSide == entry;
        var (leaves, reaches) = (Arg.Value(UnitFacts.EntrySide, entry), Arg.Value(UnitFacts.LeadSide, lead));
        return new Outcome.Found(
            TailAcross(subject, lead) is { } tail ? OtherSideReached.With(leaves, reaches, Arg.AtLeast(tail)) : OtherSide.With(leaves, reaches),
            mistyped ? PutBack.With(leaves)
                : !Moment.WallOpen(subject) ? LeadAcross
                : known ? MoveEntry.With(reaches) : MoveOrPutBack.With(reaches, leaves),
            FieldRef.To(subject.Item, mistyped ? UnitFacts.LeadSide : UnitFacts.EntrySide));
    }

    private static Length? TailAcross(Unit unit, Side lead) =>
        unit is { EntryAlong: { } entry, EntryBelowHead: { } below } && unit.MotorAlong(lead) is { } motor
        && unit.Kind?[CoveringKindFacts.LeadBehind] is { } behind
            ? TailPath.ToMotor(entry, motor, below, behind)
            : null;
}
