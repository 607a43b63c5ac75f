using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable must reach a unit at the end its motor is at.</summary>
/// <remarks>
/// <para>Why: a lead on the far side has to cross the whole window, in sight or behind the head cover.</para>
/// <para>To clear: another lead side, or a unit with its motor at the other end. Where the cable comes out at the motor end, the lead side alone stands
/// against both and may be what was mistyped.</para>
/// </remarks>
public sealed class LeadAwayFromMotor : UnitCheck
{
    private static readonly Message OtherEnd = new("The lead is on the {0}; {1} has its motor on the {2}.");
    private static readonly Message BringCable = new("Bring the cable to the {0} side now, while the wall is open.");
    private static readonly Message PutBack =
        new("The cable comes out on the {0}, where the motor is: put the lead side back to {0} if it was mistyped. " +
            "If it is right, ask the maker for the motor at that end.");
    private static readonly Message OrderOtherWay = new("Order it with the motor on the {0}, if the maker offers that.");
    private static readonly Message AskMaker = new("Ask the maker for the motor at the other end, or lead the cable across behind the head cover.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("lead-away-from-motor", "Lead side is not the motor end", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet, "lead side = motor end of the kind"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Kind is not { MotorEnd: { } end } kind)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.MotorEnd, subject, UnitFacts.Kind);
        if (subject.LeadSide is not { } lead)
            return NotChecked.Of(subject, UnitFacts.LeadSide);
        if (end == MotorEnd.Either || (end == MotorEnd.Left) == (lead == Side.Left))
            return new Outcome.Fine();
        var (lies, has) = (Arg.Value(UnitFacts.LeadSide, lead), Arg.Value(CoveringKindFacts.MotorEnd, end));
        return new Outcome.Found(
            OtherEnd.With(lies, Arg.Name(kind), has),
            subject.EntrySide is { } entry && entry != lead ? PutBack.With(has)
            : Moment.WallOpen(subject) ? BringCable.With(has) : Moment.NotOrdered(subject) ? OrderOtherWay.With(lies) : AskMaker,
            FieldRef.To(subject.Item, UnitFacts.LeadSide));
    }
}
