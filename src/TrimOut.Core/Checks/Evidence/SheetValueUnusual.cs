using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>The values of one sheet lie where such values usually lie.</summary>
/// <remarks>
/// <para>Why: a slip of the decimal point or of the unit goes into every sum that is worked out with it, and looks like any other value.</para>
/// <para>To clear: read that line of the sheet again, and put right what is typed wrong; waive it where the sheet really says so.</para>
/// </remarks>
public sealed class SheetValueUnusual() : Check<AnyItem>(Subjects.Parts)
{
    private static readonly Message OneOff = new("{0}: {1}. Usual is {2} to {3}.");
    private static readonly Message Named = new("{0} {1}");
    private static readonly Message ManyOff = new("{0} values are far from usual: {1}.");
    private static readonly Message ReadAgain = new("Read the sheet again: the decimal point, the unit and the line. Waive it where the sheet really says so.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("sheet-value-unusual", "Value of a sheet is far from usual", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "least <= value <= most, for each value by docs/figures.md; for currents 8 A, NFPA 70-2017 chapter 9 table 11(B)"));

    /// <inheritdoc/>
    public override Outcome Judge(AnyItem subject)
    {
        var known = UsualValues.All.Where(u => u.Fact.Subject == subject.Item.Kind).Select(u => (Usual: u, subject.Item.Latest(u.Fact)?.Value))
            .Where(k => k.Value is not null && !k.Value.Equals(CoveringKindFacts.None)).ToImmutableArray();
        var off = known.Where(k => !k.Usual.Holds(k.Value!)).ToImmutableArray();
        if (off.IsEmpty)
            return known.IsEmpty ? new Outcome.DoesNotApply() : new Outcome.Fine();
        var (first, value) = off[0];
        return new Outcome.Found(
            off.Length == 1
                ? OneOff.With(Arg.Label(first.Fact, small: false), Arg.Value(first.Fact, value!), Arg.Value(first.Fact, first.Least),
                    Arg.Value(first.Fact, first.Most))
                : ManyOff.With(off.Length, Arg.Of(off.SelectMany(o => new[] { Arg.Label(o.Usual.Fact), Arg.Value(o.Usual.Fact, o.Value!) }),
                    Arg.All(off.Select(o => (Arg)Named.With(Arg.Label(o.Usual.Fact), Arg.Value(o.Usual.Fact, o.Value!)))))),
            ReadAgain, FieldRef.To(subject.Item, first.Fact));
    }
}
