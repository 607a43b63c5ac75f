using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Brackets are fixed as far back as their sheet says.</summary>
/// <remarks>
/// <para>Why: the room for cover, handle and cable is reckoned with the sheet's setback; where the two differ, brackets or the line in the kit are off,
/// and all other units of the kind follow that line. A setback that is smaller so that the cover is flush is let pass.</para>
/// <para>To clear: read the tape and the line of the sheet again; where the brackets are right as they are, waive it and say why.</para>
/// </remarks>
public sealed class SetbackOffSheet : UnitCheck
{
    private static readonly Message Differs = new("Its brackets are set back {0}; the sheet of {1} has {2}.");
    private static readonly Message ReadBoth =
        new("Read the tape and the line of the sheet again, and put right the wrong one; where the brackets are right as they are, waive this and say why.");

    /// <summary>How far the two may be apart: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 8);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("setback-off-sheet", "Brackets are not set back as the sheet says", Severity.Caution, Phase.Hang,
        new Source(Source.MakersSheet + "; the tolerance is common practice, no published source",
            "|setback as measured - setback of the sheet| <= 1/8 in, or less than it where the head cover is flush only so"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Window.Mount is not { } mount)
            return NotChecked.Of(subject.Window, WindowFacts.Mount);
        if (mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        if (subject.Setback is not { } setback)
            return NotChecked.Of(subject, UnitFacts.Setback);
        if (subject.Kind?[CoveringKindFacts.Setback] is not { } sheet)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.Setback, subject, UnitFacts.Kind);
        var working = Working.Of(Info.Source.Formula, () => [("setback", setback.In(subject)), ("setback of the sheet", sheet.In(subject))]);
        return (setback - sheet).Abs() <= Tolerance || (setback < sheet && Cover.Of(subject).Figures is { } cover
                && (cover with { Setback = sheet }).Fit == RevealFit.FlushWithLessSetback)
            ? new Outcome.Fine(working)
            : new Outcome.Found(Differs.With(setback, Arg.Name(subject.Kind), sheet), ReadBoth, FieldRef.To(subject.Item, UnitFacts.Setback), working);
    }
}
