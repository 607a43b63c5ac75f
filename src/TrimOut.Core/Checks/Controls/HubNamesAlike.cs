using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>Names at the hub differ in more than a letter, a space or a mark.</summary>
/// <remarks>
/// <para>Why: Den left and Den lefft are one name to a hurried eye. Names that differ in a number, or in the letter behind it as tags do, are well
/// told apart.</para>
/// <para>To clear: rename one at the hub and here.</para>
/// </remarks>
public sealed class HubNamesAlike : UnitCheck
{
    private static readonly Message TooMuchAlike = new("It is called \"{0}\" at the hub, and {1} \"{2}\".");
    private static readonly Message RenameOne = new("Give one of the two a name that nobody mistakes.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hub-names-alike", "Two hub names are too much alike", Severity.Caution, Phase.Pair,
        new Source(Source.CommonPractice,
            "names without spaces and marks are not the same, nor do they differ in one letter more, less or other; " +
            "a digit and the letter behind a number tell"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Item.Get(UnitFacts.HubName) is not { } name)
            return new Outcome.DoesNotApply();
        var plain = PlainName.Of(name);
        var alike = plain.Sketches.SelectMany(s => subject.House.Look(Lookups.UnitsByNameSketch, s)).Where(u => u != subject.Id).Distinct()
            .Select(u => subject.House.FindUnit(u)!).Select(u => (Unit: u, Name: u.Item.Get(UnitFacts.HubName)!))
            .Where(o => !string.Equals(o.Name, name, StringComparison.OrdinalIgnoreCase) && plain.IsLike(PlainName.Of(o.Name)));
        return alike.OrderBy(o => o.Unit.Item.Place).ToList() is not [var first, ..] all
            ? new Outcome.Fine()
            : new Outcome.Found(
                TooMuchAlike.With(Arg.Typed(name), Arg.Of(all.Select(o => Arg.Name(o.Unit)), Arg.Name(first.Unit)),
                    Arg.Of(all.Select(o => Arg.Typed(o.Name)), Arg.Typed(first.Name))), RenameOne,
                FieldRef.To(subject.Item, UnitFacts.HubName));
    }
}
