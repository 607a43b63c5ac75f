using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>No two units have one name at the hub.</summary>
/// <remarks>
/// <para>Why: nobody can say which of the two is meant, nor can a voice.</para>
/// <para>To clear: rename one at the hub and here.</para>
/// </remarks>
public sealed class HubNameTwice : UnitCheck
{
    private static readonly Message AlsoCalled = new("{0} is also called \"{1}\" at the hub.");
    private static readonly Message TagOfAnother = new("It is called \"{0}\" at the hub, and that is the tag of {1}.", "tag");
    private static readonly Message NameItself = new("Give it a name that is no other unit's tag, at the hub and here.");
    private static readonly Message RenameOne = new("Give one of the two another name, at the hub and here.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hub-name-twice", "Two units have the same hub name", Severity.Stop, Phase.Pair,
        new Source(Source.CommonPractice, "every name once, whatever its case, and none the tag of another unit"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.HubName) is not { } name ? NotChecked.Of(subject, UnitFacts.HubName)
        : subject.House.UnitsAt(Lookups.UnitsByHubName, name).Where(u => u.Id != subject.Id).ToList() is [var other, ..] others
            ? new Outcome.Found(AlsoCalled.With(Arg.Of(others.Select(o => Arg.Name(o)), Arg.Name(other)), Arg.Typed(name)), RenameOne,
                FieldRef.To(subject.Item, UnitFacts.HubName))
        : TaggedSo(subject, name) is { } tagged
            ? new Outcome.Found(TagOfAnother.With(Arg.Typed(name), Arg.Name(tagged)), NameItself, FieldRef.To(subject.Item, UnitFacts.HubName))
        : new Outcome.Fine();

    /// <summary>Another unit whose tag that is; a tag with a letter is looked for without it too.</summary>
    private static Unit? TaggedSo(Unit unit, string name) => (unit.House.FindTag(name) ?? unit.House.FindTag(name[..^1]))?.Units
        .FirstOrDefault(u => u.Id != unit.Id && SameName.Comparer.Equals(u.Tag, name));
}
