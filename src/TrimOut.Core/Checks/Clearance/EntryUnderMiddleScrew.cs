using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>The middle screw does not go in where the cable comes out.</summary>
/// <remarks>
/// <para>Why: the screw is driven last, through the head rail, and nobody sees the cable behind it.</para>
/// <para>To clear: move the entry, or set the screw to the other side of the middle.</para>
/// </remarks>
public sealed class EntryUnderMiddleScrew : UnitCheck
{
    private static readonly Message EntryAtScrew = new("The cable leaves the wall {0} from the left and the middle screw goes in at {1}.");
    private static readonly Message MoveEntry = new("Move the entry to the lead side, clear of the brackets.");
    private static readonly Message MoveScrew = new("Set the screw to the other side of the middle, and hold the cable away while you drive it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-under-middle-screw", "Entry is where the middle screw goes", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice, "|entry - screw| >= 1/2 in along the head"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel || subject.Window.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        var (at, unknown) = MiddleScrew.Along(subject);
        if (at is not { } place)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        if (subject.EntrySide is null)
            return NotChecked.Of(subject, UnitFacts.EntrySide);
        if (subject.EntryFromJamb is null)
            return NotChecked.Of(subject, UnitFacts.EntryFromJamb);
        if (subject.EntryAlong is not { } entry)
            return NotChecked.Of(subject.Window, WindowFacts.RoughWidth);
        var apart = (entry - place).Abs();
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("entry from the left", entry.In(subject)), ("screw from the left", place.In(subject)), ("apart", apart.In(subject)),
            ("around a screw", MiddleScrew.Around.In(subject)),
        ]);
        var further = MiddleScrew.IsMeasured(subject) ? WidthTakenOff.OpenAtEachSide(subject) : Units.Length.Zero;
        return apart >= MiddleScrew.Around
            ? entry <= place || entry - place >= MiddleScrew.Around + further ? new Outcome.Fine(working) : NotChecked.MadeWidthOf(subject)
            : new Outcome.Found(EntryAtScrew.With(entry, Arg.AtMost(place)), Moment.WallOpen(subject) ? MoveEntry : MoveScrew,
                FieldRef.To(subject.Item, Rough.Entry.FromJambFact(subject)), working);
    }
}
