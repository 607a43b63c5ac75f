using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Limits;

/// <summary>A unit hangs level.</summary>
/// <remarks>
/// <para>Why: fabric runs to the low end, rubs on the bracket and frays.</para>
/// <para>To clear: pack or shift the bracket of the low end, and lay the level on again.</para>
/// </remarks>
public sealed class HungOutOfLevel : UnitCheck
{
    private static readonly Message HangsLow = new("One end hangs {0} lower than the other; the most is {1}.");
    private static readonly Message PackIt = new("Lift the bracket of the low end, or pack it, and lay the level on again.");

    /// <summary>How much lower one end may hang, as a tape of the house shows it: 1/8 in, or 3 mm; common practice, no published source.</summary>
    public static Length Most(DisplayUnits units) => units == DisplayUnits.Inches ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hung-out-of-level", "Unit hangs out of level", Severity.Caution, Phase.Hang,
        new Source(Source.CommonPractice, "one end no more than 1/8 in, or 3 mm, lower than the other"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.OutOfLevel) is not { } off ? NotChecked.WhereAsked(subject, "clicked-in", subject, UnitFacts.OutOfLevel)
        : off <= Most(subject.House.DisplayUnits) ? new Outcome.Fine()
        : new Outcome.Found(HangsLow.With(off, Arg.Of([], Most(subject.House.DisplayUnits))), PackIt, FieldRef.To(subject.Item, UnitFacts.OutOfLevel));
}
