using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The tail at the window must reach the motor.</summary>
/// <remarks>
/// <para>Why: a tail that does not reach needs a splice inside the opening, or a new cable.</para>
/// <para>To clear: a longer tail, or an entry nearer to the motor end.</para>
/// </remarks>
public sealed class TailShortOfMotor : RunCheck
{
    private static readonly Message Short = new("The tail is {0}; the way to the motor on the {1} is {2}.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tail-short-of-motor", "Tail does not reach the motor", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice, "tail >= up to the head + along the head to the motor end + what the sheet says is used up behind the unit"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        var unit = subject.Unit;
        if (Tail.Unknown(subject) is { } unknown)
            return unknown;
        if (unit.Kind is not { MotorEnd: not null } kind)
            return NotChecked.Of(unit.Kind, CoveringKindFacts.MotorEnd, unit, UnitFacts.Kind);
        if (kind[CoveringKindFacts.LeadBehind] is not { } behind)
            return NotChecked.Of(kind, CoveringKindFacts.LeadBehind);
        if (unit.EntrySide is null)
            return NotChecked.Of(unit, UnitFacts.EntrySide);
        if (unit.EntryFromJamb is null)
            return NotChecked.Of(unit, UnitFacts.EntryFromJamb);
        if (unit.UpToHead is not { } up)
            return NotChecked.Of(unit, UnitFacts.EntryBelowHead);
        if (unit.MotorSide is not { } motor)
            return NotChecked.Of(unit, UnitFacts.LeadSide);
        if (unit.WayToMotor is not { } path)
            return NotChecked.Of(unit.Window, WindowFacts.RoughWidth);
        var tail = Tail.Of(subject).Tail;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("tail", tail.In(subject)), ("up to the head", up.In(subject)), ("along the head", (path - up - behind).In(subject)),
            ("behind", behind.In(subject)), ("path", path.In(subject)),
        ]);
        return tail >= path
            ? new Outcome.Fine(working)
            : new Outcome.Found(Short.With(tail, Arg.Value(UnitFacts.LeadSide, motor), Arg.AtLeast(path)),
                Tail.Mend(subject, tail), Tail.Field(subject), working);
    }
}
