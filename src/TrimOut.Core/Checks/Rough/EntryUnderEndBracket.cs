using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable must not leave the wall where an end bracket will sit, of its unit or of one beside it.</summary>
/// <remarks>
/// <para>Why: a cable behind a bracket is pinched, or the bracket can't be fixed. Of several units side by side each has two, along the opening.</para>
/// <para>To clear: move the entry past the bracket, further back or further down, with the whole hole. Inside mounts only: outside, the bracket is on the
/// face.</para>
/// <para>A bracket sits at the end of its unit, which begins half of what comes off beside its part; in that gap beside it no cable can be led either.</para>
/// </remarks>
public sealed class EntryUnderEndBracket : UnitCheck
{
    private static readonly Message UnderBracket =
        new("The cable leaves the wall {0} from the jamb and {1} back; the end bracket takes {2} from the jamb, {3} to {4} back.");
    private static readonly Message UnderFarBracket =
        new("The cable leaves the wall {0} from the jamb and {1} back; an end bracket takes {2} to {3} from that jamb, {4} to {5} back.");
    private static readonly Message MoveEntry = new("Move the entry to {0} from the jamb or more, or to {1} back or more.");
    private static readonly Message MoveEntryBefore = new("Move the entry to {0} from the jamb or less, or to {1} back or more.");
    private static readonly Message MoveEntryBack = new("Move the entry to {0} back or more.");
    private static readonly Message LeadRound = new("Lead the cable round the bracket in a slot behind it, never under it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-under-end-bracket", "Entry is under the end bracket", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet,
            "clear when the hole, half the cable around its middle, is past the bracket along the head, or back <= setback or >= setback + bracket back, " +
            "or below head >= bracket down"));

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
        List<Footprint> prints = [.. subject.Window.Units.SelectMany(u => Brackets(u, Length.Zero))];
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("from jamb", entry.FromJamb.In(subject)), ("from the left", entry.Along.In(subject)), ("half the cable", entry.Radius.In(subject)),
            ("end bracket", bracket.In(subject)),
            ("brackets, from the left", string.Join(", ", prints.Select(p => $"{p.From.In(subject)} to {p.To.In(subject)}"))),
            ("back", entry.Back.In(subject)), ("bracket front", prints[0].Front.In(subject)), ("bracket rear", prints[0].Back.In(subject)),
            ("below head", entry.BelowHead.In(subject)), ("bracket down", prints[0].Down.In(subject)),
        ]);
        bool IsCaught(Length along, Length radius) => prints.Any(p => p.Covers(along, entry.Back, entry.BelowHead, radius));
        bool Caught(Length along) => IsCaught(along, entry.Radius);
        if (!Caught(entry.Along))
            return Entry.DiameterUnknown(subject, radius => IsCaught(entry.Along, radius)) ?? MadeWidthUnknown(subject) ?? (Outcome)new Outcome.Fine(working);
        var over = prints.FindAll(p => p.Covers(entry.Along, entry.Back, entry.BelowHead, entry.Radius));
        var print = over[0];
        var (one, other) = (Entry.FromEntrySide(subject, print.From), Entry.FromEntrySide(subject, print.To));
        var (near, far) = (Length.Min(one, other), Length.Max(one, other));
        var message = near == Length.Zero
            ? UnderBracket.With(entry.FromJamb, entry.Back, Arg.AtLeast(far), print.Front, print.Back)
            : UnderFarBracket.With(entry.FromJamb, entry.Back, Arg.AtMost(near), Arg.AtLeast(far), print.Front, print.Back);
        return new Outcome.Found(message.StandingFor(over.Skip(1).SelectMany(p => (Arg[])[p.From, p.To])),
            Mend(subject, near, far, print.Back + entry.Radius, entry.Radius, Caught),
            FieldRef.To(subject.Item, Entry.FromJambFact(subject)), working);
    }

    /// <summary>What says how wide a unit is made, where that is not known and its bracket could reach the entry; null where it makes no difference.</summary>
    private static Outcome.NotChecked? MadeWidthUnknown(Unit subject)
    {
        var entry = Entry.Of(subject);
        return subject.Window.Units
            .Where(u => u.MadeWidth is null && u.WidthUnsaid is not null
                && Brackets(u, WidthTakenOff.MostAtEachSide).Any(p => p.Covers(entry.Along, entry.Back, entry.BelowHead, entry.Radius)))
            .Select(u => Checks.NotChecked.Of(u.Kind, u.WidthUnsaid!, u, UnitFacts.Kind)).FirstOrDefault();
    }

    /// <summary>
    /// Both end brackets of a unit along the opening, each with the gap beside it; none where its sheet does not give them. While it is not known how wide
    /// the unit is made, they are reckoned from the ends of its part.
    /// </summary>
    private static IEnumerable<Footprint> Brackets(Unit unit, Length off)
    {
        if ((unit.Kind, unit.Place) is not ({ } kind, { } place) || kind[CoveringKindFacts.EndBracket] is not { } bracket || Entry.Unknown(kind) is not null)
            yield break;
        var (left, right) = unit.EndBrackets is { } known ? (known.Left.To, known.Right.From) : (place.From + bracket + off, place.To - bracket - off);
        yield return Entry.Footprint(unit, place.From, Length.Min(left, place.To));
        yield return Entry.Footprint(unit, Length.Max(right, place.From), place.To);
    }

    /// <summary>Past the bracket into the opening, or before it where nothing else is in the way there; else behind it.</summary>
    private static Sentence Mend(Unit unit, Length near, Length far, Length behind, Length radius, Func<Length, bool> caught)
    {
        if (!Moment.WallOpen(unit))
            return LeadRound;
        var mark = TapeMark.Of(unit.House.DisplayUnits);
        var opening = unit.Window.KnownWidth!.Value;
        bool Clear(Length jamb) => jamb > radius && jamb < opening - radius && !caught(Entry.FromEntrySide(unit, jamb));
        var (past, before) = ((far + radius).RoundUp(mark), (near - radius).RoundDown(mark));
        return Clear(past) ? MoveEntry.With(past, Arg.AtLeast(behind))
            : Clear(before) ? MoveEntryBefore.With(before, Arg.AtLeast(behind))
            : MoveEntryBack.With(Arg.AtLeast(behind));
    }
}
