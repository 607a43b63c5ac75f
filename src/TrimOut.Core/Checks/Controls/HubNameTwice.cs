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
    private static readonly Message RenameOne = new("Give one of the two another name, at the hub and here.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hub-name-twice", "Two units have the same hub name", Severity.Stop, Phase.Pair,
        new Source(Source.CommonPractice, "every name once, whatever its case"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.HubName) is not { } name ? NotChecked.Of(subject, UnitFacts.HubName)
        : subject.House.UnitsAt(Lookups.UnitsByHubName, name).Where(u => u.Id != subject.Id).ToList() is [var other, ..] others
            ? new Outcome.Found(AlsoCalled.With(Arg.Of(others.Select(o => Arg.Name(o)), Arg.Name(other)), Arg.Typed(name)), RenameOne,
                FieldRef.To(subject.Item, UnitFacts.HubName))
        : new Outcome.Fine();
}
