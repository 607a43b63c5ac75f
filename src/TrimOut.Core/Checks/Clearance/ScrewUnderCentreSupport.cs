using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>The middle screw is clear of the centre support and of the end brackets.</summary>
/// <remarks>
/// <para>Why: a screw head under the support tilts it, and the head rail bows over it.</para>
/// <para>To clear: set the screw off centre, past the edge of the support.</para>
/// </remarks>
public sealed class ScrewUnderCentreSupport : UnitCheck
{
    private static readonly Message AtEndBracket = new("The middle screw is {0} from the left; an end bracket takes {1} at each end of {2}.", "end-bracket");
    private static readonly Message AtCentreSupport = new("The middle screw is {0} from the left; the centre support takes {1} to {2}.", "centre-support");
    private static readonly Message Clear = new("Set it clear of the brackets.");
    private static readonly Message ClearAt = new("Set it clear of the brackets, such as {0} from the left.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("screw-under-centre-support", "Middle screw is under a bracket", Severity.Stop, Phase.Hang,
        new Source(Source.MakersSheet,
            "end bracket <= screw <= width - end bracket; from the support's width on: |screw - half the width| >= half the support"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var (at, unknown) = MiddleScrew.Of(subject);
        if (at is not { } screw)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        var kind = subject.Kind!;
        if ((subject.Item.Get(UnitFacts.OrderWidth) ?? subject.PartWidth) is not { } width)
            return NotChecked.Of(subject.Window, WindowFacts.RoughWidth);
        if (new[] { CoveringKindFacts.EndBracket, CoveringKindFacts.CentreFrom }.FirstOrDefault(f => kind[f] is null) is { } missing)
            return NotChecked.Of(kind, missing);
        var (bracket, support) = (kind[CoveringKindFacts.EndBracket]!.Value, subject.NeedsCentreSupport ? kind[CoveringKindFacts.CentreBracket] : Length.Zero);
        if (support is not { } wide)
            return NotChecked.Of(kind, CoveringKindFacts.CentreBracket);
        var (from, to) = ((width - wide) / 2, (width + wide) / 2);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("screw from the left", screw.In(subject)), ("width", width.In(subject)), ("end bracket", bracket.In(subject)),
            ("support", wide == Length.Zero ? "none" : $"{from.In(subject)} to {to.In(subject)}"),
        ]);
        var fault = screw < bracket || screw > width - bracket ? AtEndBracket.With(screw, bracket, width)
            : wide > Length.Zero && screw > from && screw < to ? AtCentreSupport.With(screw, from, to)
            : null;
        return fault is null
            ? new Outcome.Fine(working)
            : new Outcome.Found(fault, wide > Length.Zero ? ClearAt.With(to) : Clear, FieldRef.To(subject.Item, UnitFacts.MiddleScrew), working);
    }
}
