using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable must not leave the wall where the end bracket will sit.</summary>
/// <remarks>
/// <para>Why: a cable behind a bracket is pinched, or the bracket can't be fixed.</para>
/// <para>To clear: move the entry further in, further back or further down. Inside mounts only: outside, the bracket is on the face.</para>
/// </remarks>
public sealed class EntryUnderEndBracket : UnitCheck
{
    private static readonly Message UnderBracket =
        new("The cable leaves the wall {0} from the jamb and {1} back; the end bracket takes {2} from the jamb, {3} to {4} back.");
    private static readonly Message MoveEntry = new("Move the entry to {0} from the jamb or more, or to {1} back or more.");
    private static readonly Message LeadRound = new("Lead the cable round the bracket in a slot behind it, never under it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-under-end-bracket", "Entry is under the end bracket", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet, "clear when from jamb >= bracket, or back <= setback or >= setback + bracket back, or below head >= bracket down"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel || subject.Window.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        if (Entry.Unknown(subject) is { } unknown)
            return unknown;
        var kind = subject.Kind;
        if (kind?[CoveringKindFacts.EndBracket] is not { } bracket)
            return NotChecked.Of(kind, CoveringKindFacts.EndBracket, subject, UnitFacts.Kind);
        if (Entry.Unknown(kind) is { } sheet)
            return sheet;
        var entry = Entry.Of(subject);
        var print = Entry.Footprint(subject, Length.Zero, bracket);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("from jamb", entry.FromJamb.In(subject)), ("end bracket", bracket.In(subject)), ("back", entry.Back.In(subject)),
            ("bracket front", print.Front.In(subject)), ("bracket rear", print.Back.In(subject)),
            ("below head", entry.BelowHead.In(subject)), ("bracket down", print.Down.In(subject)),
        ]);
        return !print.Covers(entry.FromJamb, entry.Back, entry.BelowHead)
            ? new Outcome.Fine(working)
            : new Outcome.Found(
                UnderBracket.With(entry.FromJamb, entry.Back, bracket, print.Front, print.Back),
                Moment.WallOpen(subject) ? MoveEntry.With(bracket, print.Back) : LeadRound,
                FieldRef.To(subject.Item, Entry.FromJambFact(subject)), working);
    }
}
