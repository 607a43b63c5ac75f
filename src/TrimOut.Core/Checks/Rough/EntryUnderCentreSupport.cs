using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable of a wide unit must not leave the wall where the centre support will sit.</summary>
/// <remarks>
/// <para>Why: the support is fixed last, into the middle of the head, and pinches what is there.</para>
/// <para>To clear: move the entry. The support is taken to reach as far back and down as the end bracket of the sheet.</para>
/// </remarks>
public sealed class EntryUnderCentreSupport : UnitCheck
{
    private static readonly Message UnderSupport = new("The cable leaves the wall {0} from the jamb; the centre support takes {1} to {2}.");
    private static readonly Message MoveEntry = new("Move the entry to the lead side, clear of the end bracket.");
    private static readonly Message LeadRound = new("Lead the cable round the support, never under it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-under-centre-support", "Entry is under the centre support", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet, "clear when from jamb is outside half the width +- half the support, or it is clear of its depth or height"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel || subject.Window.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        var kind = subject.Kind;
        if (kind?[CoveringKindFacts.CentreFrom] is not { } from)
            return NotChecked.Of(kind, CoveringKindFacts.CentreFrom, subject, UnitFacts.Kind);
        if (subject.PartWidth is not { } width)
            return NotChecked.Of(subject.Window, WindowFacts.RoughWidth);
        if (width < from)
            return new Outcome.DoesNotApply();
        if (Entry.Unknown(subject) is { } unknown)
            return unknown;
        if (kind[CoveringKindFacts.CentreBracket] is not { } support)
            return NotChecked.Of(kind, CoveringKindFacts.CentreBracket);
        if (Entry.Unknown(kind) is { } sheet)
            return sheet;
        var entry = Entry.Of(subject);
        var print = Entry.Footprint(subject, (width - support) / 2, (width + support) / 2);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("from jamb", entry.FromJamb.In(subject)), ("width", width.In(subject)), ("centre support", support.In(subject)),
            ("from", print.From.In(subject)), ("to", print.To.In(subject)), ("back", entry.Back.In(subject)), ("below head", entry.BelowHead.In(subject)),
        ]);
        return !print.Covers(entry.FromJamb, entry.Back, entry.BelowHead)
            ? new Outcome.Fine(working)
            : new Outcome.Found(
                UnderSupport.With(entry.FromJamb, print.From, print.To), Moment.WallOpen(subject) ? MoveEntry : LeadRound,
                FieldRef.To(subject.Item, Entry.FromJambFact(subject)), working);
    }
}
