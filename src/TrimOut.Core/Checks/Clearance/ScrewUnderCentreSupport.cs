using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>The middle screw is clear of the center support and of the end brackets.</summary>
/// <remarks>
/// <para>Why: a screw head under the support tilts it, and the head rail bows over it.</para>
/// <para>To clear: set the screw off center, past the edge of the support.</para>
/// </remarks>
public sealed class ScrewUnderCentreSupport : UnitCheck
{
    private static readonly Message AtEndBracket = new("The middle screw is {0} from the left; an end bracket takes {1} at each end of {2}.", "end-bracket");
    private static readonly Message AtCentreSupport = new("The middle screw is {0} from the left; the center support takes {1} to {2}.", "centre-support");
    private static readonly Message Clear = new("Set it clear of the brackets.");
    private static readonly Message ClearAt = new("Set it clear of the brackets, such as {0} from the left.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("screw-under-centre-support", "Middle screw is under a bracket", Severity.Stop, Phase.Hang,
        new Source(Source.MakersSheet,
            "end bracket <= screw <= made width - end bracket; from the support's width on: |screw - half the made width| >= half the support"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var (at, unknown) = MiddleScrew.Of(subject);
        if (at is not { } screw)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        var kind = subject.Kind!;
        if (WidthTakenOff.Widest(subject) is not { } width)
            return NotChecked.MadeWidthOf(subject);
        if (new[] { CoveringKindFacts.EndBracket, CoveringKindFacts.CentreFrom }.FirstOrDefault(f => kind[f] is null) is { } missing)
            return NotChecked.Of(kind, missing);
        var bracket = kind[CoveringKindFacts.EndBracket]!.Value;
        var support = subject.NeedsCentreSupport == true ? kind[CoveringKindFacts.CentreBracket] : Length.Zero;
        if (support is not { } wide)
            return NotChecked.Of(kind, CoveringKindFacts.CentreBracket);
        var (from, to) = ((width - wide) / 2, (width + wide) / 2);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("screw from the left", screw.In(subject)), ("width", width.In(subject)), ("end bracket", bracket.In(subject)),
            ("support", wide == Length.Zero ? "none" : $"{from.In(subject)} to {to.In(subject)}"),
        ]);
        Outcome.Found Found(Sentence fault) => new Outcome.Found(fault,
            PlaceClear(subject, from, to, bracket, width) is { } clear ? ClearAt.With(clear) : Clear,
            FieldRef.To(subject.Item, UnitFacts.MiddleScrew), working);
        return Outcome.All(
            screw < bracket || screw > width - bracket ? Found(AtEndBracket.With(screw, bracket, width)) : null,
            screw > from && screw < to ? Found(AtCentreSupport.With(screw, Arg.AtMost(from), Arg.AtLeast(to))) : null)
            ?? (ClearAtItsNarrowest() ? (Outcome)new Outcome.Fine(working) : NotChecked.MadeWidthOf(subject));

        // What is planned stays where it is beside the support, for both are counted from the middle.
        bool ClearAtItsNarrowest()
        {
            var off = WidthTakenOff.OpenAtEachSide(subject);
            return MiddleScrew.IsMeasured(subject)
                ? screw <= width - off * 2 - bracket && (screw <= from - off || screw >= to || from == to)
                : screw - off >= bracket && screw - off <= width - off * 2 - bracket;
        }
    }

    /// <summary>A place with room for a driver beside the support, clear of the end brackets and of the cable; null where there is none.</summary>
    private static Arg? PlaceClear(Unit unit, Length from, Length to, Length bracket, Length width)
    {
        if (from == to)
            return null;
        var mark = TapeMark.Of(unit.House.DisplayUnits);
        Length[] places = [(to + MiddleScrew.Around).RoundUp(mark), (from - MiddleScrew.Around).RoundDown(mark)];
        var cable = unit.EntryAlong - MiddleScrew.LeftEnd(unit);
        var clear = places.Where(p => p >= bracket && p <= width - bracket).ToList();
        return clear.Where(p => cable is not { } at || (p - at).Abs() >= MiddleScrew.Around).Cast<Length?>().FirstOrDefault() is { } place ? place : null;
    }
}
