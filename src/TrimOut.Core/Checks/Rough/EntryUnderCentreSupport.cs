using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable of a wide unit must not leave the wall where the center support will sit.</summary>
/// <remarks>
/// <para>Why: the support is fixed last, into the middle of the head, and pinches what is there.</para>
/// <para>To clear: move the entry. The support is taken to reach as far back and down as the end bracket of the sheet.</para>
/// </remarks>
public sealed class EntryUnderCentreSupport : UnitCheck
{
    private static readonly Message UnderSupport = new("The cable leaves the wall {0} from the jamb; the center support takes {1} to {2}.");
    private static readonly Message MoveEntry = new("Move the entry to the lead side, clear of the end bracket.");
    private static readonly Message LeadRound = new("Lead the cable round the support, never under it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-under-centre-support", "Entry is under the center support", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet,
            "clear when the hole, half the cable around its middle, is outside half the width +- half the support, or clear of its depth or height"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel || subject.Window.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        var kind = subject.Kind;
        if (kind?[CoveringKindFacts.CentreFrom] is null)
            return NotChecked.Of(kind, CoveringKindFacts.CentreFrom, subject, UnitFacts.Kind);
        if (kind.NeedsNoCentreSupport)
            return new Outcome.DoesNotApply();
        if (subject.PartWidth is not { } width)
            return NotChecked.Of(subject.Window, WindowFacts.RoughWidth);
        if (subject.NeedsCentreSupport != true)
            return new Outcome.DoesNotApply();
        if (Entry.Unknown(subject) is { } unknown)
            return unknown;
        if (kind[CoveringKindFacts.CentreBracket] is not { } support)
            return NotChecked.Of(kind, CoveringKindFacts.CentreBracket);
        if (Entry.Unknown(kind) is { } sheet)
            return sheet;
        var entry = Entry.Of(subject);
        var place = subject.Place!.Value;
        var middle = (place.From + place.To) / 2;
        var print = Entry.Footprint(subject, middle - support / 2, middle + support / 2);
        var (one, other) = (Entry.FromEntrySide(subject, print.From), Entry.FromEntrySide(subject, print.To));
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("from jamb", entry.FromJamb.In(subject)), ("width", width.In(subject)), ("center support", support.In(subject)),
            ("from", print.From.In(subject)), ("to", print.To.In(subject)), ("half the cable", entry.Radius.In(subject)),
            ("back", entry.Back.In(subject)), ("below head", entry.BelowHead.In(subject)),
        ]);
        return !print.Covers(entry.Along, entry.Back, entry.BelowHead, entry.Radius)
            ? Entry.DiameterUnknown(subject, r => print.Covers(entry.Along, entry.Back, entry.BelowHead, r)) ?? (Outcome)new Outcome.Fine(working)
            : new Outcome.Found(
                UnderSupport.With(entry.FromJamb, Arg.AtMost(Length.Min(one, other)), Arg.AtLeast(Length.Max(one, other))),
                Moment.WallOpen(subject) ? MoveEntry : LeadRound,
                FieldRef.To(subject.Item, Entry.FromJambFact(subject)), working);
    }
}
