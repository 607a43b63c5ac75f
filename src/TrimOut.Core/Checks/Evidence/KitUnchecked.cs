using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>The values of a part in use were checked against its maker's sheet, and against the edition that is said of it.</summary>
/// <remarks>
/// <para>Why: a value from another job or from memory belongs to another part; the part in the box follows its own sheet.</para>
/// <para>To clear: read the sheet, put right what differs, mark each value checked.</para>
/// </remarks>
public sealed class KitUnchecked() : Check<AnyItem>(Subjects.Parts)
{
    private const int Shown = 4;

    private static readonly Message OneUnchecked = new("1 value of {0} is not checked against the maker's sheet: {1}.");
    private static readonly Message SomeUnchecked = new("{0} values of {1} are not checked against the maker's sheet: {2}.");
    private static readonly Message ManyUnchecked = new("{0} values of {1} are not checked against the maker's sheet: {2} and more.");
    private static readonly Message Older = new("Checked against edition {0} of the sheet of {1} and not against edition {2}: {3}.");
    private static readonly Message ManyOlder = new("Checked against edition {0} of the sheet of {1} and not against edition {2}: {3} and more.");
    private static readonly Message ReadOther = new("Read the newer sheet, put right what differs, and mark each value checked again.");
    private static readonly Message ReadSheet = new("Read the sheet, put right what differs, and mark each value checked.");

    /// <summary>Its id.</summary>
    internal const string Id = "kit-unchecked";

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new(Id, "Kit values are not checked against the maker's sheet", Severity.Note, Phase.WalkThrough,
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
        var older = open.Where(f => SheetMark.OlderEdition(part, f) is not null).ToLookup(f => SheetMark.OlderEdition(part, f)!);
        open.RemoveAll(f => SheetMark.OlderEdition(part, f) is not null);
        return Outcome.All([.. open.Count == 0 ? [] : new[] { NeverChecked(part, open) }, .. older.Select(o => AgainstOlder(part, o.Key, [.. o]))])!;
    }

    private static Outcome.Found AgainstOlder(Item part, string edition, List<Fact> values) => new(
        (values.Count > Shown ? ManyOlder : Older).With(Arg.Typed(edition), Arg.Name(part), Arg.Typed(SheetMark.EditionOf(part)!), Labels(values)), ReadOther,
        FieldRef.To(part, values[0]));

    private static Arg Labels(List<Fact> values) => Arg.Of(values.Select(f => Arg.Label(f)), Arg.All(values.Take(Shown).Select(f => Arg.Label(f))));

    private static Outcome.Found NeverChecked(Item part, List<Fact> open)
    {
        var first = Labels(open);
        return new Outcome.Found(
            open.Count == 1 ? OneUnchecked.With(Arg.Name(part), first)
                : (open.Count > Shown ? ManyUnchecked : SomeUnchecked).With(open.Count, Arg.Name(part), first),
            ReadSheet, FieldRef.To(part, open[0]));
    }
}
