using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>The values of a part in use were checked against its maker's sheet.</summary>
/// <remarks>
/// <para>Why: a value from another job or from memory belongs to another part; the part in the box follows its own sheet.</para>
/// <para>To clear: read the sheet, put right what differs, mark each value checked.</para>
/// </remarks>
public sealed class KitUnchecked() : Check<AnyItem>(Subjects.Parts)
{
    private static readonly Message OneUnchecked = new("1 value of {0} is not checked against the maker's sheet: {1}.");
    private static readonly Message SomeUnchecked = new("{0} values of {1} are not checked against the maker's sheet: {2}.");
    private static readonly Message ManyUnchecked = new("{0} values of {1} are not checked against the maker's sheet: {2} and more.");
    private static readonly Message ReadSheet = new("Read the sheet, put right what differs, and mark each value checked.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("kit-unchecked", "Kit values are not checked against the maker's sheet", Severity.Note, Phase.WalkThrough,
        new Source(Source.MakersSheet, "every value of a part in use is marked checked"));

    /// <inheritdoc/>
    public override Outcome Judge(AnyItem subject)
    {
        var part = subject.Item;
        if (subject.House.Look(Lookups.UsersOfPart, part.Id).Count == 0)
            return new Outcome.DoesNotApply();
        var open = SheetValues.NotHeldIn(part).ToList();
        if (open.Count == 0)
            return new Outcome.Fine();
        var first = Arg.Of(open.Select(f => Arg.Label(f)), Arg.All(open.Take(4).Select(f => Arg.Label(f))));
        return new Outcome.Found(
            open.Count == 1 ? OneUnchecked.With(Arg.Name(part), first)
                : (open.Count > 4 ? ManyUnchecked : SomeUnchecked).With(open.Count, Arg.Name(part), first),
            ReadSheet, FieldRef.To(part, open[0]));
    }
}
